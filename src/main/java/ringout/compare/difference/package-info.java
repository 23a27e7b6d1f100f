/** What a difference between two aircraft is: its kind, where it stands in both lists, what usually becomes of it. */
@NullMarked
package ringout.compare.difference;

import org.jspecify.annotations.NullMarked;
