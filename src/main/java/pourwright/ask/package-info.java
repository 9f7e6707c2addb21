/**
 * Questions to a plan: why not something else, which answer to measure next, what an answer would settle, and a rule in
 * plain words. Whatever is said of other answers was tried by a consultation of its own, so it is true by construction.
 * Pure: no clock, no file, no chance.
 */
package pourwright.ask;
