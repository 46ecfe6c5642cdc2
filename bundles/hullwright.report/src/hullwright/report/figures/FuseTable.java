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

		private static Current most(BreakingCurrent breaking) {
			return breaking.asked().orElse(new Current(Double.MAX_VALUE));
		}
	}

	private final Map<String, Asked> fuses = new LinkedHashMap<>();
	private final Wording wording;

	FuseTable(BoatElectrics boat, Wording wording) {
		this.wording = wording;
		for (StateElectrics state : boat.states()) {
			List<FuseReading> carried = state.lowest().fuses();
			for (int i = 0; i < carried.size(); i++) {
				Asked asked = new Asked(carried.get(i), state.starting().fuses().get(i).current(), state.breaking().get(i));
				fuses.merge(carried.get(i).owner() + Wording.side(carried.get(i).side()), asked, Asked::worse);
			}
		}
	}

	TextTable table() {
		TextTable table = new TextTable("Fuse or breaker", ">Rated", ">Carries", ">Starting", ">Used", ">Breaks", ">Asked to break");
		for (Asked each : fuses.values()) {
			FuseReading fuse = each.carries;
			table.row(wording.name(fuse.owner()) + Wording.side(fuse.side()) + fuse.fuse().kind().map(kind -> " (" + kind.identity().name() + ")").orElse(""),
					Wording.amperes(fuse.fuse().rating()), Wording.amperes(fuse.current()), Wording.amperes(each.starting),
					Wording.perCent(Math.max(fuse.current().amperes(), each.starting.amperes()) / fuse.fuse().rating().amperes()),
					Wording.amperes(each.breaking.able()), Wording.amperes(each.breaking.asked()) + (each.breaking.isExceeded() ? " !" : ""));
		}
		return table;
	}

	/** What the marks in the table mean, where they occur. */
	List<String> notes() {
		Optional<String> unknown = fuses.values().stream().filter(each -> each.breaking.asked().isEmpty()).findFirst()
				.map(each -> "- No resistance is stated between that fuse and its bank or supply, so its fault current cannot be told.");
		Optional<String> exceeded = fuses.values().stream().filter(each -> each.breaking.isExceeded()).findFirst()
				.map(each -> "! A short circuit right behind the fuse drives more through it than it can break.");
		return Stream.of(unknown, exceeded).flatMap(Optional::stream).toList();
	}
}
