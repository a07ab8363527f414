/** Tests of what the batch book holds. */
@org.jspecify.annotations.NullMarked
package spoonfall.book;
