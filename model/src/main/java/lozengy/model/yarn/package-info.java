/**
 * How much yarn a blanket needs, and how many balls to buy: exactly once it is arranged, by tone
 * before. Pure functions; nothing here reads or prints.
 */
package lozengy.model.yarn;
