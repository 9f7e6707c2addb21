/**
 * Units at the edges of the program: reading what people type, converting to SI and back, and printing.
 *
 * <p>Inside the program every value is in SI. {@link pourwright.units.QuantityReader} and {@link pourwright.units.RatioReader} bring
 * text in, {@link pourwright.units.Show} brings values out, {@link pourwright.units.UnitBook} converts. Conversions are definitions,
 * held as ratios of whole numbers; a public units library checks each of them in the tests and is loaded only for units that the table does not hold.
 */
package pourwright.units;
