/**
 * Where the pieces lie: settings, places and their names, seams and touches, strips in joining
 * order, and the finished blanket's measures.
 */
package lozengy.model.layout;
