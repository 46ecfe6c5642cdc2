/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.electrics.BoatElectrics;
import hullwright.analysis.electrics.StateElectrics;
import hullwright.analysis.fault.FuseOpening;
import hullwright.analysis.fault.ShortCircuit;
import hullwright.network.Network;
import hullwright.quantity.Duration;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Short circuits at the ends of branches: of all power states the worst at each place, those that end badly first.
 */
final class FaultTable {

	private static final Comparator<ShortCircuit> WORST_FIRST = Comparator.comparingInt(FaultTable::weight)
			.thenComparing(FaultTable::lasting, Comparator.reverseOrder());

	private final List<ShortCircuit> worst;
	private final Wording wording;
	private final Network network;

	FaultTable(BoatElectrics boat, Network network, Wording wording) {
		this.wording = wording;
		this.network = network;
		Map<String, ShortCircuit> byPlace = new LinkedHashMap<>();
		for (StateElectrics state : boat.states()) {
			for (ShortCircuit each : state.shortCircuits()) {
				if (each.network().equals(network.name()) && each.verdict() != ShortCircuit.Verdict.NO_CURRENT) {
					byPlace.merge(each.at(), each, (one, other) -> WORST_FIRST.compare(one, other) <= 0 ? one : other);
				}
			}
		}
		worst = byPlace.values().stream().sorted(WORST_FIRST).toList();
	}

	private static int weight(ShortCircuit fault) {
		return switch (fault.verdict()) {
		case NOT_ENDED -> 0;
		case WITHOUT_LIMIT -> 1;
		case ENDED_TOO_LATE -> 2;
		case FUSE_UNKNOWN -> 3;
		case ENDED_IN_TIME -> 4;
		case HARMLESS -> 5;
		case NO_CURRENT -> 6;
		};
	}

	/** How long it lasts against what the weakest wire stands; in seconds where nothing tells that. */
	private static double lasting(ShortCircuit fault) {
		double ended = fault.ended().map(Duration::seconds).orElse(0.0);
		return fault.stands().map(stands -> ended / stands.seconds()).orElse(ended);
	}

	boolean isEmpty() {
		return worst.isEmpty();
	}

	/** One sentence on all places. */
	String summary() {
		Map<ShortCircuit.Verdict, Long> counts = worst.stream().collect(Collectors.groupingBy(ShortCircuit::verdict, TreeMap::new, Collectors.counting()));
		return "Short circuits at " + worst.size() + (worst.size() == 1 ? " place: " : " places: ")
				+ counts.entrySet().stream().map(each -> (counts.size() == 1 ? worst.size() == 1 ? "" : "all " : each.getValue() + " ") + word(each.getKey()))
						.collect(Collectors.joining(", "))
				+ ".";
	}

	TextTable table() {
		TextTable table = TextTable.worstFirst("Short circuit at", ">Current", "Opens", ">Within at most", "Weakest wire", ">Stands it for", "Verdict");
		boolean alike = worst.stream().map(ShortCircuit::verdict).distinct().count() == 1;
		for (ShortCircuit each : worst) {
			table.row(wording.name(each.at(), network.name()), current(each) + each.limitedBy().map(none -> " *").orElse(""),
					each.openings().stream().map(this::opening).collect(Collectors.joining(", then ")), each.ended().map(Wording::time).orElse("-"),
					each.conductor().map(name -> wording.name(name, network.name())).orElse(""), each.stands().map(Wording::time).orElse(""),
					alike ? "" : word(each.verdict()));
		}
		return table;
	}

	private static String current(ShortCircuit fault) {
		return fault.verdict() == ShortCircuit.Verdict.WITHOUT_LIMIT ? "-" : Wording.amperes(fault.current());
	}

	/**
	 * What the star means, if there is one.
	 *
	 * @param most how many rows of the table are shown
	 */
	List<String> notes(int most) {
		return worst.stream().limit(most).flatMap(each -> each.limitedBy().stream()).distinct()
				.map(converter -> "* " + wording.name(converter) + " gives no more.").toList();
	}

	private String opening(FuseOpening opening) {
		return wording.name(opening.owner(), network.name()) + Wording.side(opening.side()) + " " + opening.fuse().rating();
	}

	private static String word(ShortCircuit.Verdict verdict) {
		return switch (verdict) {
		case NOT_ENDED -> "not ended by any fuse";
		case FUSE_UNKNOWN -> "not known, for want of the fuse's curve";
		case WITHOUT_LIMIT -> "without any resistance to tell the current";
		case ENDED_TOO_LATE -> "ended too late";
		case ENDED_IN_TIME -> "ended in time";
		case HARMLESS -> "borne for ever";
		case NO_CURRENT -> "without current";
		};
	}
}
