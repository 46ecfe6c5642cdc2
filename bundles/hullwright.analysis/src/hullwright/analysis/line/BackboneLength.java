/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import hullwright.network.Backbone;
import hullwright.network.CableRun;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.part.Cable;
import hullwright.quantity.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * How long a backbone is.
 * <p>
 * Two counts are published. Terminator to terminator, where a drop at the end tee that is longer than the cable from that
 * tee to its terminator stands in for that cable (cable maker's guide N2-A §1.2; equivalent in DN-H): the longer-of count.
 * Terminators plus the drops at both ends (display maker's pages N2-B): the sum count, never shorter.
 * <p>
 * Each grade of cable allows its own length. Where grades are mixed, each uses up its share of its own allowance and the
 * shares add up; an allowance is spent when the shares reach 1 (the DeviceNet guides' proportional rule for mixed trunks,
 * from memory; applied to this bus it is common practice).
 *
 * @param run the length of the cables of the backbone, end to end
 * @param longerOf the length by the longer-of count
 * @param sum the length by the sum count
 * @param longerOfAllowance how long the line of the longer-of count may be, empty if a cable's allowance is unknown
 * @param sumAllowance how long the line of the sum count may be, empty if a cable's allowance is unknown
 * @param grades the cables that it is made of, in the order of first use
 * @param positions how far along the run each element starts, in the order of the elements
 */
public record BackboneLength(Length run, Length longerOf, Length sum, Optional<Length> longerOfAllowance, Optional<Length> sumAllowance,
		Set<Cable> grades, List<Length> positions) {

	/**
	 * The length of a backbone.
	 *
	 * @param drops the drops of its network
	 * @param dropLength how long a drop is
	 */
	public static BackboneLength of(Backbone backbone, List<Drop> drops, Function<Drop, DropLength> dropLength) {
		List<Length> positions = new ArrayList<>();
		Set<Cable> grades = new LinkedHashSet<>();
		Stretch run = Stretch.NONE;
		for (Element element : backbone.elements()) {
			positions.add(run.length());
			if (element instanceof CableRun cable) {
				run = run.plus(cable);
				cable.cable().ifPresent(grades::add);
			}
		}
		EndStretch start = EndStretch.atStart(backbone, drops, dropLength);
		EndStretch end = EndStretch.atEnd(backbone, drops, dropLength);
		Stretch longerOf = run;
		Stretch sum = run;
		for (EndStretch each : List.of(start, end)) {
			sum = sum.plus(each.longestDrop());
			if (each.longestDrop().length().exceeds(each.tail().length())) {
				longerOf = longerOf.minus(each.tail()).plus(each.longestDrop());
			}
		}
		return new BackboneLength(run.length(), longerOf.length(), sum.length(), longerOf.allowance(), sum.allowance(),
				Collections.unmodifiableSet(grades), List.copyOf(positions));
	}
}
