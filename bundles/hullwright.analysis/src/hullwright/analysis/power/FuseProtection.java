/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import hullwright.analysis.fault.ConductorLimit;
import hullwright.analysis.wiring.Medium;
import hullwright.analysis.wiring.Span;
import hullwright.analysis.wiring.SupplyEntry;
import hullwright.analysis.wiring.Wiring;
import hullwright.network.Boat;
import hullwright.network.Element;
import hullwright.network.Feed;
import hullwright.network.Network;
import hullwright.network.part.Fuse;
import hullwright.network.power.Supply;
import hullwright.network.power.SupplyLead;
import hullwright.quantity.Current;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * A fuse or breaker and the weakest conductor that depends on it alone: every way from a source to that conductor leads through
 * this fuse or a larger one.
 *
 * @param owner the qualified name of the supply, tap or cord that the fuse belongs to
 * @param fuse the fuse
 * @param conductor the qualified name of the cable or cord; for a lead that of the supply or of the device that it feeds
 * @param rated what that may carry
 * @param kind what kind of conductor it is
 */
public record FuseProtection(String owner, Fuse fuse, String conductor, Current rated, Kind kind) {

	/** What a fuse protects. */
	public enum Kind {
		/** The wires from a breaker to where it feeds a network, or a device that has a supply of its own. */
		LEAD,
		/** A cable of a backbone, or a cord and its cables. */
		TRUNK,
		/** A cable of a drop, where a fault is less likely and one device is behind it. */
		DROP
	}

	/** What each fuse of a boat protects, once for leads, backbones and feeds and once for drops, in the order of the wiring. */
	public static List<FuseProtection> of(Boat boat, Wiring wiring) {
		return new Search(boat, wiring).found();
	}

	/** By how much the fuse is larger than what the conductor may carry; 1 if they are equal. */
	public double share() {
		return fuse.rating().si() / rated.si();
	}

	/** The smallest fuse on the way to a point, on the way where that is largest. */
	private record Limit(String owner, Fuse fuse, int point) {

		double amperes() {
			return fuse.rating().si();
		}
	}

	private static final class Search {

		private final Boat boat;
		private final Wiring wiring;
		private final Map<Integer, List<Span>> spansAt = new HashMap<>();
		private final Map<Integer, Limit> limits = new HashMap<>();
		private final Set<Integer> unprotected = new HashSet<>();

		Search(Boat boat, Wiring wiring) {
			this.boat = boat;
			this.wiring = wiring;
			for (Span span : wiring.spans()) {
				if (span.passes().supply()) {
					spansAt.computeIfAbsent(span.from(), point -> new ArrayList<>()).add(span);
					spansAt.computeIfAbsent(span.to(), point -> new ArrayList<>()).add(span);
				}
			}
		}

		List<FuseProtection> found() {
			Map<String, Fuse> fuses = new HashMap<>();
			boat.power().supplies().stream().filter(each -> each.fuse().isPresent()).forEach((Supply each) -> fuses.put(each.name(), each.fuse().get()));
			PriorityQueue<Limit> open = new PriorityQueue<>(Comparator.comparingDouble(Limit::amperes).reversed());
			for (SupplyEntry entry : wiring.entries()) {
				if (fuses.containsKey(entry.supply())) {
					open.add(new Limit(entry.supply(), fuses.get(entry.supply()), entry.point()));
				} else {
					withoutFuse(entry.point(), open);
				}
			}
			while (!open.isEmpty()) {
				Limit limit = open.remove();
				if (!unprotected.contains(limit.point) && limits.putIfAbsent(limit.point, limit) == null) {
					spansAt.getOrDefault(limit.point, List.of()).forEach(span -> open.add(behind(span, limit)));
				}
			}
			return List.copyOf(weakest().values());
		}

		/** Up to the first fuse nothing protects; what lies behind that fuse depends on it. */
		private void withoutFuse(int point, PriorityQueue<Limit> open) {
			if (!unprotected.add(point)) {
				return;
			}
			for (Span span : spansAt.getOrDefault(point, List.of())) {
				int far = span.from() == point ? span.to() : span.from();
				Optional<Fuse> fuse = span.medium() instanceof Medium.Inside inside ? inside.fuse() : Optional.empty();
				fuse.ifPresentOrElse(each -> open.add(new Limit(span.element(), each, far)), () -> withoutFuse(far, open));
			}
		}

		private static Limit behind(Span span, Limit limit) {
			int far = span.from() == limit.point ? span.to() : span.from();
			return span.medium() instanceof Medium.Inside inside && inside.fuse().filter(fuse -> fuse.rating().si() < limit.amperes()).isPresent()
					? new Limit(span.element(), inside.fuse().get(), far)
					: new Limit(limit.owner, limit.fuse, far);
		}

		private Map<String, FuseProtection> weakest() {
			Set<String> trunk = trunk();
			Map<String, FuseProtection> weakest = new LinkedHashMap<>();
			boat.power().supplies().forEach(supply -> supply.lead().ifPresent(lead -> lead(supply, supply.name(), lead, weakest)));
			boat.fittedDevices().forEach(device -> device.settings().feeds().forEach(feed -> feed.lead().ifPresent(lead -> boat.power().supplies().stream()
					.filter(supply -> supply.name().equals(feed.supply())).findFirst().ifPresent(supply -> lead(supply, device.name(), lead, weakest)))));
			for (Span span : wiring.spans()) {
				Optional<Current> rated = span.medium() instanceof Medium.Conductors ? span.medium().rated() : Optional.empty();
				Limit limit = larger(limits.get(span.from()), limits.get(span.to()));
				if (span.passes().supply() && rated.isPresent() && limit != null) {
					Kind kind = trunk.contains(span.element()) ? Kind.TRUNK : Kind.DROP;
					keep(weakest, limit.owner + (kind == Kind.DROP ? " on drops" : ""), new FuseProtection(limit.owner, limit.fuse, span.element(), rated.get(), kind));
				}
			}
			return weakest;
		}

		/** The wires from a breaker to a network or to a device have that breaker only. */
		private static void lead(Supply supply, String owner, SupplyLead lead, Map<String, FuseProtection> weakest) {
			supply.fuse().ifPresent(fuse -> keep(weakest, supply.name(),
					new FuseProtection(supply.name(), fuse, owner, ConductorLimit.bears(lead.size(), Optional.empty()), Kind.LEAD)));
		}

		private static void keep(Map<String, FuseProtection> weakest, String key, FuseProtection found) {
			weakest.merge(key, found, (known, next) -> next.share() > known.share() ? next : known);
		}

		private static Limit larger(Limit one, Limit other) {
			return one == null || other != null && other.amperes() > one.amperes() ? other : one;
		}

		private Set<String> trunk() {
			Set<String> names = new HashSet<>();
			for (Network network : boat.networks()) {
				network.backbones().forEach(backbone -> backbone.elements().stream().map(Element::name).forEach(names::add));
				network.feeds().stream().map(Feed::legs).forEach(legs -> legs.stream().map(Element::name).forEach(names::add));
			}
			return names;
		}
	}
}
