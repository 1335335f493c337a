/**
 * The command line: the program's entry, what it shares with its surroundings, and how mistakes and
 * exit codes are handled. The commands themselves are in {@code lozengy.cli.command}.
 */
package lozengy.cli;
