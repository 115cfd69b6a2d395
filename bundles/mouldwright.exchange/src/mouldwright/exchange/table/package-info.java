/** Reads offsets from tables of comma-separated values: points of stations, or half-breadths by waterline and heights by buttock. */
package mouldwright.exchange.table;
