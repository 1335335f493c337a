/**
 * The words for what a check finds: faults, alone or many in one sentence. Rules hand out values;
 * this alone makes English of them.
 */
package lozengy.model.wording;
