/** A gallery of looks: pictures first, then what each costs. */
package lozengy.report.gallery;
