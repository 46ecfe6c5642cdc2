/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

/**
 * The assumptions of a bus in bits.
 *
 * @param notListed how long a frame is that no list has; 0 if there is none
 * @param errorsAtOnce how many errors follow each other at once; 0 if there are none
 * @param errorsApart how long other errors are apart
 * @param horizon how long a busy period may be at most
 */
record BusTerms(int notListed, int errorsAtOnce, long errorsApart, long horizon) {

	/** What errors within a window cost, if the longest frame that one can spoil is so long. */
	long errorsWithin(long window, int longest) {
		if (errorsAtOnce == 0 || window <= 0) {
			return 0;
		}
		return (errorsAtOnce + (window - 1) / errorsApart) * (BusErrors.SIGNALLING_BITS + longest);
	}

	/** The part of the bus that errors take in the long run. */
	double errorShare(int longest) {
		return errorsAtOnce == 0 ? 0 : (BusErrors.SIGNALLING_BITS + longest) / (double) errorsApart;
	}
}
