/** Readings over the flight hours. */
package ringout.compare.fleet;
