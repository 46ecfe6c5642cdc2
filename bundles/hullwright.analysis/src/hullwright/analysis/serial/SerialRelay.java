/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.List;
import java.util.Optional;

import hullwright.quantity.Duration;
import hullwright.quantity.Ratio;

/**
 * A device that passes sentences from serial lines on to another: what comes in against what its output drains.
 *
 * @param device the qualified name of the device
 * @param output its port that they go out by
 * @param line the qualified name of the line that they go out on
 * @param carries what that line carries
 * @param inputs where they come from, in the order of the text
 * @param told what is told on the inputs and passed on, with what the device tells there of its own and with events at their least
 *        interval
 * @param drains whether the output drains it
 * @param holds the characters that the device holds at most, if it passes on in the order of arrival, each sentence when it is whole;
 *        none where there is no bound
 * @param complete whether all that is passed on could be counted; if not, these figures are too low
 */
public record SerialRelay(String device, String output, String line, CharacterRate carries, List<Input> inputs, CharacterRate told,
		Drains drains, Optional<Long> holds, boolean complete) {

	/** Whether an output drains what comes in. */
	public enum Drains {
		/** It drains its inputs even if they are full. */
		ANYTHING,
		/** It drains what is told, and not more inputs than that: what else comes has to be filtered, as from 38400 to 4800 bit/s. */
		WHAT_IS_TOLD,
		/** As much is told as it carries, or more: what waits never drains, and whatever the buffer, sentences are lost. */
		NEVER
	}

	/**
	 * An input of such a device.
	 *
	 * @param port the port
	 * @param line the qualified name of the line that it listens to
	 * @param carries what that line carries, if its rate is known
	 * @param told what comes by it and is passed on, with events at their least interval
	 * @param buffer how much of what comes in its buffer holds, if the catalog says
	 * @param waiting how much of what comes in has to be held at most; none where there is no bound, or no rate
	 */
	public record Input(String port, String line, Optional<CharacterRate> carries, CharacterRate told, Optional<Duration> buffer,
			Optional<Duration> waiting) {

		/** Whether the buffer holds what waits; none if no buffer is stated or the rate is unknown. */
		public Optional<Boolean> bufferSuffices() {
			return carries.isEmpty() ? Optional.empty() : buffer.map(each -> waiting.map(held -> !held.exceeds(each)).orElse(false));
		}
	}

	public SerialRelay {
		inputs = List.copyOf(inputs);
	}

	/** The part of the output that is asked for; above 1 it cannot carry it. */
	public Ratio share() {
		return told.shareOf(carries);
	}
}
