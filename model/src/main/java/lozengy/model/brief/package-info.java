/** The brief: the file that asks. Its records, its reader and its writer. */
package lozengy.model.brief;
