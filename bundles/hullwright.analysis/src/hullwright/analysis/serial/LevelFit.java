/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import hullwright.network.part.SerialPort.Level;

/**
 * Whether the signal of one port can drive another, and how it is wired. Where no source is named it is common practice.
 *
 * @param verdict whether it can
 * @param reason why, or how
 */
public record LevelFit(Verdict verdict, Reason reason) {

	/** Whether one port can drive another. */
	public enum Verdict {
		/** It can. */
		FITS,
		/** It usually works, but no standard covers it. */
		OUT_OF_STANDARD,
		/** It cannot. */
		DOES_NOT_FIT,
		/** Nobody says how one of them signals. */
		UNKNOWN
	}

	/** Why a port can drive another, or cannot. */
	public enum Reason {
		/** Both signal the same way. */
		SAME_LEVEL,
		/** The talker's wire to A, its own ground, not one near the listener, to B (public page of a multiplexer's maker). */
		B_TO_GROUND_OF_TALKER,
		/** A to the one input, B left open, and the grounds joined, so that nothing isolates. */
		A_TO_SINGLE_INPUT,
		/**
		 * 0 and 5 V into an input that wants less than -3 and more than 3 V: the input mostly takes 0 V for the lower (public page
		 * on the electrical interface of NMEA 0183).
		 */
		BELOW_THRESHOLD_OF_RS232,
		/** Up to 15 V of both polarities, which a listener withstands (digital-interface appendices of public installation manuals). */
		RS232_WITHIN_15_V,
		/** Both talk: outputs drive against each other. */
		OUTPUT_AGAINST_OUTPUT,
		/** The catalog does not say how one of them signals. */
		UNSTATED
	}

	static final LevelFit OUTPUTS = new LevelFit(Verdict.DOES_NOT_FIT, Reason.OUTPUT_AGAINST_OUTPUT);

	/** How a talker of one level drives a listener of another. */
	public static LevelFit of(Level talker, Level listener) {
		if (talker == Level.UNSTATED || listener == Level.UNSTATED) {
			return new LevelFit(Verdict.UNKNOWN, Reason.UNSTATED);
		} else if (talker == listener) {
			return new LevelFit(Verdict.FITS, Reason.SAME_LEVEL);
		} else if (talker == Level.RS232) {
			return new LevelFit(Verdict.OUT_OF_STANDARD, Reason.RS232_WITHIN_15_V);
		} else if (listener == Level.RS232) {
			return new LevelFit(Verdict.OUT_OF_STANDARD, Reason.BELOW_THRESHOLD_OF_RS232);
		} else if (listener == Level.DIFFERENTIAL) {
			return new LevelFit(Verdict.FITS, Reason.B_TO_GROUND_OF_TALKER);
		}
		return new LevelFit(Verdict.OUT_OF_STANDARD, Reason.A_TO_SINGLE_INPUT);
	}
}
