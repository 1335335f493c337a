/** What is left to work by hand once an arrangement stands, and in which order. */
package lozengy.model.making;
