/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.data;

/**
 * A sentence of NMEA 0183.
 *
 * @param formatter its formatter, three letters
 * @param title what people call it
 * @param length the characters of its longest usual form, with the leading sign and the line end; 0 if nobody says
 * @param timing how often it is told
 */
public record Sentence(String formatter, String title, int length, Timing timing) implements Message {

	@Override
	public String name() {
		return formatter;
	}
}
