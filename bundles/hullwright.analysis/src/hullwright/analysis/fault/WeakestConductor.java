/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.fault;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

import hullwright.analysis.power.Assumption;
import hullwright.analysis.power.FaultCurrents;
import hullwright.analysis.wiring.Medium;
import hullwright.analysis.wiring.Span;
import hullwright.analysis.wiring.Wiring;
import hullwright.network.part.Cable;
import hullwright.quantity.ConductorSize;
import hullwright.quantity.Current;
import hullwright.quantity.Duration;

/**
 * The conductor that is harmed first in a short circuit. The currents change when a fuse opens; each time uses up its part of what
 * a conductor stands at the current of that time, and when the parts reach 1 it is harmed.
 *
 * @param name the qualified name of the cable, or of the supply whose lead it is
 * @param stands how long it stands the short circuit
 */
record WeakestConductor(String name, Duration stands) {

	/** What of the fault current may flow in a conductor without being counted as its path. */
	private static final double ASIDE = 1e-6;

	private static final ConductorSize UNSTATED = (ConductorSize) Assumption.Kind.CONDUCTOR.assumed().orElseThrow();

	/**
	 * The weakest conductor; none if all stand it for ever.
	 *
	 * @param phases the currents, before the first fuse opens and after each that does
	 * @param lasting how long each phase lasts until a fuse opens; the last one is taken to go on
	 */
	static Optional<WeakestConductor> of(Wiring wiring, List<FaultCurrents> phases, List<Duration> lasting) {
		Optional<WeakestConductor> weakest = Optional.empty();
		for (int i = 0; i < wiring.spans().size(); i++) {
			int number = i;
			if (!isCarrying(phases, i)) {
				continue;
			}
			Span span = wiring.spans().get(i);
			if (span.medium() instanceof Medium.Conductors conductors && conductors.length().metres() > 0) {
				weakest = weaker(weakest, span.element(), stands(conductors.power().map(Cable.Conductor::size).orElse(UNSTATED), conductors.rated(),
						phase -> phase.spanCurrents()[number], phases, lasting));
			}
		}
		for (int i = 0; i < phases.get(0).leads().size(); i++) {
			int number = i;
			FaultCurrents.ThroughLead lead = phases.get(0).leads().get(i);
			weakest = weaker(weakest, lead.supply(), stands(lead.size(), Optional.empty(), phase -> phase.leads().get(number).current().amperes(),
					phases, lasting));
		}
		return weakest;
	}

	/**
	 * Whether all that the current goes through is known to stand it for ever, provided that every conductor does: what is rated
	 * carries no more than that, and there is a conductor or a rating to know it from.
	 */
	static boolean isBorne(Wiring wiring, FaultCurrents current) {
		boolean known = current.leads().stream().anyMatch(each -> carries(current, each.current().amperes()));
		for (int i = 0; i < wiring.spans().size(); i++) {
			double amperes = current.spanCurrents()[i];
			if (carries(current, amperes)) {
				Medium medium = wiring.spans().get(i).medium();
				if (medium.rated().map(rated -> new Current(amperes).exceeds(rated)).orElse(false)) {
					return false;
				}
				known |= medium.rated().isPresent() || medium instanceof Medium.Conductors;
			}
		}
		return known;
	}

	private static boolean isCarrying(List<FaultCurrents> phases, int span) {
		for (FaultCurrents phase : phases) {
			if (carries(phase, phase.spanCurrents()[span])) {
				return true;
			}
		}
		return false;
	}

	private static boolean carries(FaultCurrents phase, double amperes) {
		return amperes > ASIDE * phase.current().orElseThrow().amperes();
	}

	private static Optional<Duration> stands(ConductorSize size, Optional<Current> rated, ToDoubleFunction<FaultCurrents> currentIn,
			List<FaultCurrents> phases, List<Duration> lasting) {
		double used = 0;
		double seconds = 0;
		for (int i = 0; i < phases.size(); i++) {
			double amperes = currentIn.applyAsDouble(phases.get(i));
			Optional<Duration> limit = carries(phases.get(i), amperes) ? ConductorLimit.stands(size, rated, new Current(amperes))
					: Optional.empty();
			boolean last = i == phases.size() - 1;
			if (limit.isPresent()) {
				double left = (1 - used) * limit.get().seconds();
				if (last || left <= lasting.get(i).seconds()) {
					return Optional.of(new Duration(seconds + left));
				}
				used += lasting.get(i).seconds() / limit.get().seconds();
			}
			seconds += last ? 0 : lasting.get(i).seconds();
		}
		return Optional.empty();
	}

	private static Optional<WeakestConductor> weaker(Optional<WeakestConductor> known, String name, Optional<Duration> stands) {
		return stands.isPresent() && known.map(each -> stands.get().compareTo(each.stands) < 0).orElse(true)
				? Optional.of(new WeakestConductor(name, stands.get())) : known;
	}
}
