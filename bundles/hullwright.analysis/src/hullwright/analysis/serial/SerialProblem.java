/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.List;

import hullwright.network.DevicePortRef;
import hullwright.quantity.BitRate;
import hullwright.quantity.Ratio;

/**
 * Why a serial line cannot work as the text has it, or why it has no figures.
 */
public sealed interface SerialProblem {

	/** Nobody talks on the line. */
	record NoTalker() implements SerialProblem {
	}

	/** Nobody listens to the line. */
	record NoListener() implements SerialProblem {
	}

	/** More than one talks on the line: their outputs drive against each other. */
	record SeveralTalkers(List<DevicePortRef> talkers) implements SerialProblem {

		public SeveralTalkers {
			talkers = List.copyOf(talkers);
		}
	}

	/** An end of the line is no port for serial lines, or no device has it. */
	record NoSerialPort(DevicePortRef end) implements SerialProblem {
	}

	/** A port is to talk and cannot. */
	record CannotTalk(DevicePortRef end) implements SerialProblem {
	}

	/** A port is to listen and cannot; if it talks, two outputs are joined. */
	record CannotListen(DevicePortRef end) implements SerialProblem {
	}

	/**
	 * Others talk to the same input on lines that the text has before, so that outputs drive against each other: the qualified names of
	 * these lines.
	 */
	record InputShared(DevicePortRef listener, List<String> otherLines) implements SerialProblem {

		public InputShared {
			otherLines = List.copyOf(otherLines);
		}
	}

	/** A device listens on the line on which it talks: the qualified name of the device. */
	record HearsItself(String device) implements SerialProblem {
	}

	/** No line signals at such a rate. */
	record RateImpossible(BitRate rate) implements SerialProblem {
	}

	/** A port cannot be set to the rate of the line. */
	record RateNotPossible(DevicePortRef end, BitRate rate, List<BitRate> possible) implements SerialProblem {

		public RateNotPossible {
			possible = List.copyOf(possible);
		}
	}

	/**
	 * A port talks on another line, too, that the text has before and has at another rate: the qualified names of such lines. A port
	 * has one rate.
	 */
	record PortAtTwoRates(DevicePortRef talker, List<String> otherLines) implements SerialProblem {

		public PortAtTwoRates {
			otherLines = List.copyOf(otherLines);
		}
	}

	/** There is no rate that all ends can be set to. */
	record NoCommonRate(List<PossibleRates> ends) implements SerialProblem {

		public NoCommonRate {
			ends = List.copyOf(ends);
		}
	}

	/** The text does not say how fast the line signals, and the ends leave it open: between these rates, or between all if none. */
	record RateOpen(List<BitRate> candidates) implements SerialProblem {

		public RateOpen {
			candidates = List.copyOf(candidates);
		}
	}

	/** What is told regularly is as much as the line carries, or more, so that what waits never drains. */
	record NeverDrains(Ratio asked) implements SerialProblem {
	}

	/** What events tell at most, with what is told regularly, is as much as the line carries, or more. */
	record EventsMayFlood(Ratio asked) implements SerialProblem {
	}

	/**
	 * What a port can be set to.
	 *
	 * @param end the port
	 * @param rates its rates
	 */
	record PossibleRates(DevicePortRef end, List<BitRate> rates) {

		public PossibleRates {
			rates = List.copyOf(rates);
		}
	}
}
