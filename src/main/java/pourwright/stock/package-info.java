/** What is at hand of a part, can by can, and which of it a mix takes. Pure; masses in kg, ages in s. */
package pourwright.stock;
