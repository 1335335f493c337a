/** The command line: thin commands over model and solver. */
package lozengy.cli;
