/** Comparing two aircraft: every change that was made is found, and nothing else. */
package ringout.compare;
