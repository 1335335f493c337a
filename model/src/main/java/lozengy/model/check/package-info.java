/** The rules' checks: from scratch, independent of any solver. */
package lozengy.model.check;
