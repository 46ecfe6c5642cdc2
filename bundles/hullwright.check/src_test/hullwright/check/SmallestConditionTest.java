/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/**
 * The condition that is printed means exactly the boats that it was made from.
 */
class SmallestConditionTest {

	private static final List<String> OPTIONS = List.of("a", "b", "c", "d", "e");

	@RepeatedTest(200)
	void theConditionHoldsOnTheseBoatsAndNoOthers(RepetitionInfo repetition) {
		Random random = new Random(repetition.getCurrentRepetition());
		List<SortedSet<String>> boats = new ArrayList<>();
		for (int number = 0; number < 32; number++) {
			if (random.nextInt(4) > 0) {
				SortedSet<String> boat = new TreeSet<>();
				for (int option = 0; option < OPTIONS.size(); option++) {
					if ((number >> option & 1) == 1) {
						boat.add(OPTIONS.get(option));
					}
				}
				boats.add(boat);
			}
		}
		BitSet occurs = new BitSet();
		for (int boat = 0; boat < boats.size(); boat++) {
			occurs.set(boat, random.nextInt(3) == 0);
		}
		String condition = new SmallestCondition(OPTIONS, boats).of(occurs);
		if (occurs.isEmpty() || occurs.cardinality() == boats.size()) {
			assertEquals("", condition);
			return;
		}
		for (int boat = 0; boat < boats.size(); boat++) {
			assertEquals(occurs.get(boat), holds(condition, boats.get(boat)), condition + " on " + boats.get(boat));
		}
	}

	/** Reads the words of the condition by themselves, without the code under test. */
	private static boolean holds(String condition, SortedSet<String> boat) {
		return Stream.of(condition.split(" or ")).anyMatch(alternative -> Stream.of(alternative.split(" and "))
				.allMatch(term -> term.startsWith("not ") ? !boat.contains(term.substring(4)) : boat.contains(term)));
	}

	@Test
	void fourThousandBoatsAreNoTrouble() {
		List<String> options = new ArrayList<>();
		for (int option = 0; option < 12; option++) {
			options.add("o" + option);
		}
		List<SortedSet<String>> boats = new ArrayList<>();
		BitSet odd = new BitSet();
		for (int number = 0; number < 4096; number++) {
			SortedSet<String> boat = new TreeSet<>();
			for (int option = 0; option < 12; option++) {
				if ((number >> option & 1) == 1) {
					boat.add(options.get(option));
				}
			}
			odd.set(number, boat.contains("o0") && (boat.contains("o1") || !boat.contains("o2")));
			boats.add(boat);
		}
		String condition = new SmallestCondition(options, boats).of(odd);
		assertTrue(condition.equals("o0 and o1 or o0 and not o2") || condition.equals("o0 and not o2 or o0 and o1"), condition);
	}
}
