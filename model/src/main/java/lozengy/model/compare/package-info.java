/** Sets arrangements side by side: parts, yarn left, rounds changed, and which none beats. */
package lozengy.model.compare;
