/**
 * A blanket in the middle of the work: pieces that are marked made or joined, stock that is counted
 * again, wishes that change, and what planning again has upset.
 */
package lozengy.model.progress;
