/**
 * An arrangement as one page to open in a browser: it holds all that it needs and asks no network.
 *
 * <p>{@link lozengy.report.page.Page} puts it together. Style and script lie beside the classes as
 * {@code page.css} and {@code page.js}. What the script needs to know stands in the page as JSON;
 * all other content is there without a script.
 */
package lozengy.report.page;
