/**
 * What a vacuum kit is worth: from a few gauge readings and what a person sees, what is wrong with it and what to do; and
 * which pump would serve the materials a workshop means to use. Pure functions of answers and knowledge.
 */
package pourwright.kit;
