/**
 * What leaves the book for paper or for others: labels for jars, and a report of a cook in one file. Writes nothing that nobody chose, and
 * claims nothing of shelf life or allergens. Depends on the book, its record and the words.
 */
@NullMarked
package spoonfall.paper;

import org.jspecify.annotations.NullMarked;
