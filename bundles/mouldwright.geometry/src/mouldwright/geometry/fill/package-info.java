/** The cavities foam is poured into. */
package mouldwright.geometry.fill;
