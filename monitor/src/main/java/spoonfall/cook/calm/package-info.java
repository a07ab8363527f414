/**
 * What is said calmly: times ahead that stay put, reminders that keep their distance. Depends on {@code signal}
 * and the words of {@code cook}.
 */
@NullMarked
package spoonfall.cook.calm;

import org.jspecify.annotations.NullMarked;
