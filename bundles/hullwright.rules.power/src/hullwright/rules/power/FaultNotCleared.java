/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.fault.ShortCircuit;
import hullwright.network.PlacesInText;
import hullwright.quantity.Duration;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A short circuit flows on because no fuse ends it, or longer than a conductor stands it. Told once for a network, where it is worst.
 */
public final class FaultNotCleared implements BoatRule {

	/** The conventional hour of protective devices. */
	private static final Duration CONVENTIONAL = new Duration(3600);

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/fault-not-cleared", "Short circuit not cleared", Severity.ERROR,
				"a short circuit at {at} draws {current}{ending}; {conductor} does not stand that",
				"ABYC E-11 as quoted on public pages: the fuse protects the conductor; IEC 60364-4-43, 434.5.2 for what copper stands (from memory)")
				.silencedBy("power/fuse-missing", "power/fuse-too-large");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		PlacesInText places = new PlacesInText(boat.boat());
		Map<String, ShortCircuit> worst = new LinkedHashMap<>();
		boat.figures().electrics().states().stream().flatMap(state -> state.shortCircuits().stream()).filter(FaultNotCleared::isHarmful)
				.forEach(fault -> worst.merge(fault.network(), fault, (known, next) -> excess(next) > excess(known) ? next : known));
		return worst.values().stream().map(fault -> boat.finding(places.of(fault.at()))
				.value("at", ShortName.of(fault.at()))
				.value("current", fault.current())
				.value("ending", fault.ended().map(time -> " for " + time).orElse(", and no fuse ends it"))
				.value("conductor", fault.conductor().map(ShortName::of).orElse("the wiring"))
				.build()).toList();
	}

	/** How many times longer it flows than the conductor stands it. */
	private static double excess(ShortCircuit fault) {
		return fault.stands().map(stands -> fault.ended().orElse(CONVENTIONAL).si() / stands.si()).orElse(Double.POSITIVE_INFINITY);
	}

	/** A fuse of the conductor's own rating lets a little more through for up to an hour; that is how fuses are, and conductors stand it. */
	private static boolean isHarmful(ShortCircuit fault) {
		return fault.verdict() == ShortCircuit.Verdict.ENDED_TOO_LATE
				|| fault.verdict() == ShortCircuit.Verdict.NOT_ENDED && fault.stands().filter(CONVENTIONAL::exceeds).isPresent();
	}
}
