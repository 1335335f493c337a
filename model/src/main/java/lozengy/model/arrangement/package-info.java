/** The arrangement: the file that answers. Its record, its reader and its writer. */
package lozengy.model.arrangement;
