/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.Optional;
import java.util.stream.Stream;

import hullwright.quantity.BitRate;
import hullwright.quantity.Ratio;

/**
 * What an AIS receiver tells at most when both channels are full, whatever interval the text states: 75 messages a second of 49
 * characters, 3675 characters a second, 96 % of a line of 38400 bit/s and more than seven times what one of 4800 bit/s carries.
 *
 * <p>The slots of a minute on a channel are those of ITU-R M.1371 (from memory). A sentence for a message of one slot, 168 bits
 * in characters of six, has 28 of them and 21 around them.
 *
 * @param tells what is told at most
 * @param taken the part of the line that it takes; none where its rate is unknown
 */
public record AisWorstCase(CharacterRate tells, Optional<Ratio> taken) {

	/** How many channels there are. */
	public static final int CHANNELS = 2;

	/** How many messages of one slot a channel has room for in a minute. */
	public static final int SLOTS_PER_MINUTE = 2250;

	/** The characters of a sentence for a message of one slot. */
	public static final int CHARACTERS = 49;

	/** What a line has to carry that brings the reports of other ships; none if it brings none. */
	static Optional<AisWorstCase> of(SerialLoad load, Optional<BitRate> rate) {
		Stream<SentenceOnLine> all = Stream.concat(load.counted().stream().map(CountedSentence::sentence), load.leftOut().stream().map(SentenceLeftOut::sentence));
		if (all.noneMatch(each -> each.sentence().formatter().equals("VDM"))) {
			return Optional.empty();
		}
		CharacterRate tells = new CharacterRate(CHANNELS * SLOTS_PER_MINUTE / 60.0 * CHARACTERS);
		return Optional.of(new AisWorstCase(tells, rate.map(each -> tells.shareOf(CharacterRate.of(each)))));
	}

	/** Whether the line carries it, if its rate is known. */
	public Optional<Boolean> fits() {
		return taken.map(each -> !Waiting.isFull(each));
	}
}
