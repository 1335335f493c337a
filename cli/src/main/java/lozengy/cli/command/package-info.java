/** The commands: each turns its options into one request, has it carried out and prints. */
package lozengy.cli.command;
