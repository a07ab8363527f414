/**
 * Photos that come from anywhere, made anew: looked at before they are decoded, turned upright, made small, and written without whatever
 * else was in the file. Depends on nothing of ours.
 */
@NullMarked
package spoonfall.photo;

import org.jspecify.annotations.NullMarked;
