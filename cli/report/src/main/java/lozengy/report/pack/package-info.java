/** Packs, in words and for programs. */
package lozengy.report.pack;
