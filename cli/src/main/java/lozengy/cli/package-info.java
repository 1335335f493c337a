/**
 * The command line: the program's entry, and how what goes wrong in a call is told. The commands
 * themselves are in {@code lozengy.cli.command}.
 */
package lozengy.cli;
