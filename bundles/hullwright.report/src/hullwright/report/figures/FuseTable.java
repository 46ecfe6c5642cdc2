/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.electrics.BoatElectrics;
import hullwright.analysis.electrics.StateElectrics;
import hullwright.analysis.power.BreakingCurrent;
import hullwright.analysis.power.FuseReading;
import hullwright.quantity.Current;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The fuses and breakers of a boat: what they carry and what they are asked to break, of all power states the most.
 */
final class FuseTable {

	/** A fuse in one state or in the worst of each. */
	private record Asked(FuseReading carries, Current starting, BreakingCurrent breaking) {

		Asked worse(Asked other) {
			return new Asked(carries.current().compareTo(other.carries.current()) >= 0 ? carries : other.carries,
					starting.compareTo(other.starting) >= 0 ? starting : other.starting,
					most(breaking).compareTo(most(other.breaking)) >= 0 ? breaking : other.breaking);
		}

		/** Which part of its rating the most that flows through it is. */
		double used() {
			return Math.max(carries.current().amperes(), starting.amperes()) / carries.fuse().rating().amperes();
		}

		private static Current most(BreakingCurrent breaking) {
			return breaking.asked().orElse(new Current(Double.MAX_VALUE));
		}
	}

	private final List<Asked> fuses;
	private final Wording wording;

	FuseTable(BoatElectrics boat, Wording wording) {
		this.wording = wording;
		Map<String, Asked> worst = new LinkedHashMap<>();
		for (StateElectrics state : boat.states()) {
			List<FuseReading> carried = state.lowest().fuses();
			for (int i = 0; i < carried.size(); i++) {
				Asked asked = new Asked(carried.get(i), state.starting().fuses().get(i).current(), state.breaking().get(i));
				worst.merge(carried.get(i).owner() + Wording.side(carried.get(i).side()), asked, Asked::worse);
			}
		}
		fuses = worst.values().stream()
				.sorted(Comparator.comparing((Asked each) -> each.breaking.isExceeded()).thenComparing(Asked::used).reversed()).toList();
	}

	TextTable table() {
		TextTable table = TextTable.worstFirst("Fuse or breaker", ">Rated", ">Carries", ">Starting", ">Used", ">Breaks", ">Asked to break");
		for (Asked each : fuses) {
			FuseReading fuse = each.carries;
			table.row(wording.name(fuse.owner()) + Wording.side(fuse.side()) + fuse.fuse().kind().map(kind -> " (" + kind.identity().name() + ")").orElse(""),
					fuse.fuse().rating().toString(), Wording.amperes(fuse.current()), Wording.amperes(each.starting),
					Wording.perCent(each.used()),
					each.breaking.able().map(Current::toString).orElse("-"), Wording.amperes(each.breaking.asked()) + (each.breaking.isExceeded() ? " !" : ""));
		}
		return table;
	}

	/** What the marks in the table mean, where they occur. */
	List<String> notes() {
		Optional<String> unknown = fuses.stream().filter(each -> each.breaking.asked().isEmpty()).findFirst()
				.map(each -> "- under 'Asked to break': no resistance is stated between the fuse and its bank or supply, so nothing tells that current.");
		Optional<String> unable = fuses.stream().filter(each -> each.breaking.able().isEmpty()).findFirst()
				.map(each -> "- under 'Breaks': no catalog tells what the fuse can break.");
		Optional<String> exceeded = fuses.stream().filter(each -> each.breaking.isExceeded()).findFirst()
				.map(each -> "! A short circuit right behind the fuse drives more through it than it can break.");
		return Stream.of(unable, unknown, exceeded).flatMap(Optional::stream).toList();
	}
}
