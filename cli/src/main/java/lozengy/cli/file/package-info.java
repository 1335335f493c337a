/** The files that commands read and write: where they lie, how they are named, how they change. */
package lozengy.cli.file;
