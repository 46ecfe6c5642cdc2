/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

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
 * @param conductor the qualified name of the cable, cord or lead
 * @param rated what that may carry
 * @param onDrop whether it is on a drop, where a fault is less likely and only one device is behind it
 */
public record FuseProtection(String owner, Fuse fuse, String conductor, Current rated, boolean onDrop) {

	/** What each fuse of a boat protects, once for the backbone and feeds and once for drops, in the order of the wiring. */
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
			for (Span span : wiring.spans()) {
				Optional<Current> rated = span.medium() instanceof Medium.Conductors ? span.medium().rated() : Optional.empty();
				Limit limit = larger(limits.get(span.from()), limits.get(span.to()));
				if (span.passes().supply() && rated.isPresent() && limit != null) {
					boolean onDrop = !trunk.contains(span.element());
					weakest.merge(limit.owner + (onDrop ? " on drops" : ""), new FuseProtection(limit.owner, limit.fuse, span.element(), rated.get(), onDrop),
							(known, next) -> next.share() > known.share() ? next : known);
				}
			}
			return weakest;
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
