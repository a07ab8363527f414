/**
 * Says what matters through a program of this machine, such as a speech synthesiser with a speaker by the hob. Depends
 * on the kitchen, which it listens to, and on what the kitchen says; knows nothing of the web.
 */
@NullMarked
package spoonfall.announce;

import org.jspecify.annotations.NullMarked;
