/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.List;

import hullwright.quantity.Voltage;

/**
 * Why a boat has no operating point, or one only in part. Things are told by their qualified names.
 */
public sealed interface PowerProblem {

	/** The qualified name of what it concerns first, for those who look for its place in the text. */
	String subject();

	/** Devices on supply conductors that no supply enters, or that have no return to it. */
	record Unfed(String network, List<String> devices) implements PowerProblem {

		public Unfed {
			devices = List.copyOf(devices);
		}

		@Override
		public String subject() {
			return devices.isEmpty() ? network : devices.get(0);
		}
	}

	/** A bank, converter or supply of which no text states a voltage; it was left out. */
	record NoVoltage(String source) implements PowerProblem {

		@Override
		public String subject() {
			return source;
		}
	}

	/**
	 * The voltage breaks down under the loads.
	 *
	 * @param device the device whose voltage sinks most
	 * @param share which part of all loads can still be fed, 0 to 1; the result is that of this part
	 */
	record CannotBeFed(String device, double share) implements PowerProblem {

		@Override
		public String subject() {
			return device;
		}
	}

	/** A loop without any resistance: nothing tells how the current divides in it. */
	record ZeroResistanceLoop(String element) implements PowerProblem {

		@Override
		public String subject() {
			return element;
		}
	}

	/** A piece without any resistance lies across a voltage. */
	record ShortedSource(String element, Voltage across) implements PowerProblem {

		@Override
		public String subject() {
			return element;
		}
	}

	/** A source lies beside others without any resistance between; it was left out. */
	record ParallelSources(String source, Voltage difference) implements PowerProblem {

		@Override
		public String subject() {
			return source;
		}
	}

	/** A value that cannot be; what has it was left out. */
	record AbsurdValue(String element, double value) implements PowerProblem {

		@Override
		public String subject() {
			return element;
		}
	}

	/** Values so far apart that the computer's numbers leave no answer. */
	record OutOfRange(String element) implements PowerProblem {

		@Override
		public String subject() {
			return element;
		}
	}
}
