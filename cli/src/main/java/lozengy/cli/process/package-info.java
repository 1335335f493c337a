/**
 * What the program shares with its surroundings: standard streams, the stop signal, exit codes, and
 * refusals with what is told of them.
 */
package lozengy.cli.process;
