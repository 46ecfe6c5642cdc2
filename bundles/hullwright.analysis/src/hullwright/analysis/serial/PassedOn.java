/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.List;
import java.util.Optional;

/**
 * What one input of a device brings for one of its outputs: never more in a time than a burst and what follows it at its rate, and
 * never faster than its line.
 *
 * @param peak what its line carries, in characters a second; infinite if unknown
 * @param burst the characters that may be due at one moment
 * @param rate what is told in the long run, in characters a second
 * @param longest the characters of the longest sentence
 */
record PassedOn(double peak, double burst, double rate, int longest) {

	/**
	 * What some of the sentences of a line bring.
	 *
	 * <p>A line that is never faster than its peak does not lengthen the burst of all that goes over it; of a part of it, the rest may
	 * gather what becomes due while it waits (the arrival curves of the textbooks on network calculus).
	 */
	static PassedOn of(List<CountedSentence> passed, SerialLoad line, double peak) {
		double rate = passed.stream().mapToDouble(each -> each.rate().perSecond()).sum();
		Optional<Double> due = line.burst();
		int longest = passed.stream().mapToInt(CountedSentence::characters).max().orElse(0);
		if (line.total().perSecond() >= peak || due.isEmpty()) {
			// its line may always be busy and tell what it can
			return passed.isEmpty() ? new PassedOn(peak, 0, 0, 0) : new PassedOn(peak, Double.POSITIVE_INFINITY, Math.min(rate, peak), longest);
		}
		double burst = passed.stream().mapToDouble(each -> each.burst().orElseThrow()).sum();
		return new PassedOn(peak, passed.size() == line.counted().size() ? burst : burst + rate * due.get() / peak, rate, longest);
	}

	/** The characters that come in a time, in seconds, at most. */
	double within(double time) {
		return time == 0 ? 0 : Math.min(peak * time, burst + rate * time);
	}

	/** From when on they come at the rate, in seconds; infinite where they come at the peak for ever. */
	double bend() {
		return peak > rate ? burst / (peak - rate) : 0;
	}

	/** The characters a second that come at most in the long run. */
	double inTheLongRun() {
		return Double.isFinite(bend()) ? Math.min(rate, peak) : peak;
	}
}
