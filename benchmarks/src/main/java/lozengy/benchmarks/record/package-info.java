/** Raw results with what they were measured on, and the tables made from them. */
package lozengy.benchmarks.record;
