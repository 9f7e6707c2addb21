/** How near one job or part is to another, by what decided about it and not by its words. */
package pourwright.alike;
