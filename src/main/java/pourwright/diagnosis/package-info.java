/** From what a bad part looks like to what went wrong: evidence, odds, the next question, the test and the change. */
package pourwright.diagnosis;
