/**
 * What a pan is to be watched for, and what batch is planned for it. Depends on {@code kitchen.file}, plans and the
 * record's diaries.
 */
@NullMarked
package spoonfall.kitchen.plan;

import org.jspecify.annotations.NullMarked;
