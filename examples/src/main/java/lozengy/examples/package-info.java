/** A small program that embeds the library. */
package lozengy.examples;
