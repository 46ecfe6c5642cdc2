/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import hullwright.network.Backbone;
import hullwright.network.CableRun;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.part.Cable;
import hullwright.network.part.Tee;
import hullwright.quantity.Length;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.ArrayList;
import java.util.Optional;
import java.util.function.Function;

/**
 * One end of a backbone: the cable from the last tee to the terminator, and the longest drop at that tee.
 *
 * @param tail the cable from the tee to the terminator
 * @param longestDrop the longest drop at the tee, as cable of the kind that the backbone has there
 */
record EndStretch(Stretch tail, Stretch longestDrop) {

	static EndStretch atStart(Backbone backbone, List<Drop> drops, Function<Drop, DropLength> dropLength) {
		return from(backbone.elements(), drops, dropLength);
	}

	static EndStretch atEnd(Backbone backbone, List<Drop> drops, Function<Drop, DropLength> dropLength) {
		List<Element> backwards = new ArrayList<>(backbone.elements());
		Collections.reverse(backwards);
		return from(backwards, drops, dropLength);
	}

	private static EndStretch from(List<Element> elements, List<Drop> drops, Function<Drop, DropLength> dropLength) {
		Stretch tail = Stretch.NONE;
		for (Element element : elements) {
			if (element instanceof CableRun cable) {
				tail = tail.plus(cable);
			} else if (element instanceof Fitting fitting && fitting.part() instanceof Tee) {
				return new EndStretch(tail, longestDropAt(fitting, drops, dropLength, nearestGrade(elements)));
			}
		}
		return new EndStretch(Stretch.NONE, Stretch.NONE);
	}

	private static Stretch longestDropAt(Fitting tee, List<Drop> drops, Function<Drop, DropLength> dropLength, Optional<Cable> grade) {
		return drops.stream()
				.filter(drop -> drop.from().part().equals(tee.name()))
				.max(Comparator.comparing(drop -> dropLength.apply(drop).total()))
				.map(drop -> stretchOf(drop, dropLength.apply(drop).total(), grade))
				.orElse(Stretch.NONE);
	}

	/** A drop uses the allowance of its own cable; leads and adapters, whose grade nobody declares, that of the backbone. */
	private static Stretch stretchOf(Drop drop, Length total, Optional<Cable> backboneGrade) {
		Stretch cables = Stretch.NONE;
		for (Element leg : drop.legs()) {
			if (leg instanceof CableRun run) {
				Optional<Cable> grade = run.cable().filter(cable -> cable.longestBackbone().isPresent()).or(() -> backboneGrade);
				cables = cables.plus(Stretch.of(run.length(), grade));
			}
		}
		return cables.plus(Stretch.of(total.minus(cables.length()), backboneGrade));
	}

	private static Optional<Cable> nearestGrade(List<Element> elements) {
		return elements.stream()
				.filter(CableRun.class::isInstance)
				.map(element -> ((CableRun) element).cable())
				.flatMap(Optional::stream)
				.findFirst();
	}
}
