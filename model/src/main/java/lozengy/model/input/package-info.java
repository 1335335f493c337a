/** Reading files with places, collecting mistakes, and writing files whole. */
package lozengy.model.input;
