/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.electrics.BoatElectrics;
import hullwright.analysis.power.LeadSizing;
import hullwright.analysis.power.SimpleDrop;
import hullwright.analysis.power.TapPlace;
import hullwright.network.Network;
import hullwright.quantity.CrossSection;
import hullwright.quantity.Voltage;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Voltage drops by the formulas of the trade, and where a supply would better enter.
 */
final class DropTables {

	/** A place that gains the weakest device less is not worth a word, in V. */
	private static final double WORTH_A_MOVE = 0.05;

	private final BoatElectrics boat;
	private final Wording wording;

	DropTables(BoatElectrics boat, Wording wording) {
		this.boat = boat;
		this.wording = wording;
	}

	/** The simple formula, for each side of each place where a supply enters. */
	TextTable simple(Network network) {
		TextTable table = new TextTable("From", "Towards", ">Load", ">Length", ">Drop by formula");
		for (SimpleDrop each : boat.simpleDrops()) {
			if (each.network().equals(network.name()) && each.length().metres() > 0) {
				table.row(wording.name(each.part(), network.name()), each.towardsEnd() ? "end of backbone" : "start of backbone",
						Wording.number(each.load().dividedBy(SimpleDrop.LOAD_EQUIVALENCE), 0) + " LEN", Wording.metres(each.length()), Wording.volts(each.drop()));
			}
		}
		return table;
	}

	/** Where supplies would better enter a network. */
	List<String> taps(Network network) {
		Map<String, TapPlace> places = new LinkedHashMap<>();
		boat.states().stream().flatMap(state -> state.taps().stream()).filter(each -> each.network().equals(network.name()))
				.sorted(Comparator.comparing(TapPlace::gain).reversed()).forEach(each -> places.putIfAbsent(each.present(), each));
		return places.values().stream().map(each -> each.gain().volts() < WORTH_A_MOVE
				? wording.name(each.supply()) + " enters well at " + wording.name(each.present(), network.name()) + "."
				: wording.name(each.supply()) + " would better enter beside " + wording.name(each.best(), network.name()) + " than at "
						+ wording.name(each.present(), network.name()) + ": the weakest device would lose " + Wording.volts(each.lossThere())
						+ " instead of " + Wording.volts(each.lossNow()) + ".")
				.toList();
	}

	/** Leads beside what the feed-wire formula asks. */
	TextTable leads() {
		TextTable table = TextTable.worstFirst("Lead of", ">Length", ">Wire", ">Sized for", ">Asked at 3 %", "", ">Asked at 10 %", "");
		for (LeadSizing each : boat.leadSizings().stream().sorted(Comparator.comparingDouble(LeadSizing::asked).reversed()).toList()) {
			table.row(wording.name(each.of()), Wording.metres(each.lead().length()), each.lead().size().toString(), Wording.amperes(each.current()),
					area(each.critical().area()), each.critical().fulfilled() ? "" : "thinner", area(each.other().area()),
					each.other().fulfilled() ? "" : "thinner");
		}
		return table;
	}

	private static String area(CrossSection area) {
		return area.squareMillimetres() < 0.095 ? "under 0.1 mm2" : Wording.number(area.squareMillimetres(), 2) + " mm2";
	}

	/** The full result beside the formula, in a sentence; none where the network is not fed. */
	Optional<String> beside(Network network) {
		return boat.states().stream().flatMap(state -> state.lowest().devices().stream())
				.filter(each -> each.network().equals(network.name())).flatMap(each -> each.drop().stream()).max(Voltage::compareTo)
				.map(drop -> "The full calculation, with each load where it is, drops, contacts and the warm wire, finds at most " + Wording.volts(drop) + ".");
	}
}
