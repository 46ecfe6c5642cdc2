/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.data.MessageUse;
import hullwright.quantity.Duration;

/**
 * Something about data that cannot be as the text says.
 */
public sealed interface DataProblem {

	/** The qualified name of the device or line that it concerns. */
	String subject();

	/** A gateway turns a message into itself. */
	record TurnsIntoItself(String device, MessageUse use) implements DataProblem {

		@Override
		public String subject() {
			return device;
		}
	}

	/** Both sides of a bridge are on one carrier, where it would tell again what it hears. */
	record PassesBack(String device, Carrier carrier) implements DataProblem {

		@Override
		public String subject() {
			return device;
		}
	}

	/** A device tells a message at an interval that is none. */
	record IntervalImpossible(String device, MessageUse use, Duration interval) implements DataProblem {

		@Override
		public String subject() {
			return device;
		}
	}

	/** A device is set to listen to one that tells no such message anywhere. */
	record TakesFromSilent(String device, MessageUse use, String from) implements DataProblem {

		@Override
		public String subject() {
			return device;
		}
	}

	/** More ways of data were found than are worth looking at; the rest is left out. */
	record TooManyWays(String device) implements DataProblem {

		@Override
		public String subject() {
			return device;
		}
	}
}
