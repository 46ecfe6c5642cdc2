/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.fault;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.Predicate;

import hullwright.analysis.wiring.AttachedDevice;
import hullwright.analysis.wiring.JoinedPoints;
import hullwright.analysis.wiring.Medium;
import hullwright.analysis.wiring.Span;
import hullwright.analysis.wiring.SupplyEntry;
import hullwright.analysis.wiring.TerminatingResistor;
import hullwright.analysis.wiring.Wiring;
import hullwright.network.Boat;
import hullwright.network.power.Bank;
import hullwright.network.power.Converter;
import hullwright.network.power.PowerPlant;
import hullwright.network.power.Supply;

/**
 * What is lost when one thing fails, for everything that can: with all supplies switched on.
 */
public final class Losses {

	private final Boat boat;
	private final Wiring wiring;
	private final int[] from;
	private final List<AttachedDevice> drawing;
	private final int[] drawingPoints;
	private final boolean onceEach;
	private final int[] entryPoints;
	private final Cuts supply;
	private final Cuts back;
	private final Cuts signal;

	private Losses(Boat boat, Wiring wiring) {
		this.boat = boat;
		this.wiring = wiring;
		from = wiring.spans().stream().mapToInt(Span::from).toArray();
		drawing = wiring.devices().stream().filter(each -> each.device().model().power().load().isPresent()).toList();
		drawingPoints = drawing.stream().mapToInt(AttachedDevice::point).toArray();
		onceEach = drawing.stream().map(each -> each.device().name()).distinct().count() == drawing.size();
		entryPoints = wiring.entries().stream().mapToInt(SupplyEntry::point).distinct().toArray();
		supply = Cuts.of(wiring.points(), from, ends(each -> each.passes().supply()), entryPoints);
		back = Cuts.of(wiring.points(), from, ends(each -> each.passes().back()), entryPoints);
		signal = Cuts.of(wiring.points(), from, ends(each -> each.passes().signal()), new int[0]);
	}

	/** The losses of a boat; things whose failure loses nothing are left out. */
	public static List<Loss> of(Boat boat, Wiring wiring) {
		Losses losses = new Losses(boat, wiring);
		List<Loss> all = new ArrayList<>();
		losses.sources(all);
		losses.spans(all);
		losses.bridges(all);
		return all.stream().filter(Loss::isAny).toList();
	}

	private int[] ends(Predicate<Span> passing) {
		return wiring.spans().stream().mapToInt(each -> passing.test(each) ? each.to() : -1).toArray();
	}

	private void spans(List<Loss> all) {
		List<Span> spans = wiring.spans();
		for (int i = 0; i < spans.size(); i++) {
			Span span = spans.get(i);
			int edge = i;
			if (span.medium() instanceof Medium.Inside inside) {
				if (inside.fuse().isPresent()) {
					all.add(new Loss(Loss.What.FUSE, span.element(), Optional.empty(), inside.side(), unpowered(point -> supply.parts(edge, point)), List.of(),
							List.of(), List.of()));
				}
				continue;
			}
			boolean wasted = span.medium() instanceof Medium.Conductors conductors && conductors.length().metres() == 0;
			if (!wasted) {
				all.add(cut(edge, span));
			}
		}
	}

	private Loss cut(int edge, Span span) {
		List<String> unpowered = supply.parts(edge) || back.parts(edge)
				? unpowered(point -> supply.parts(edge, point) || back.parts(edge, point)) : List.of();
		int resistorsBeyond = 0;
		int resistors = 0;
		if (signal.parts(edge)) {
			for (TerminatingResistor each : wiring.terminators()) {
				if (each.network() == span.network()) {
					resistors++;
					resistorsBeyond += signal.parts(edge, each.point()) ? 1 : 0;
				}
			}
		}
		boolean unterminated = resistorsBeyond > 0 && resistorsBeyond < resistors;
		return new Loss(span.medium() instanceof Medium.Contact ? Loss.What.JOINT : Loss.What.CABLE, span.element(), span.other(), Optional.empty(), unpowered,
				signal.parts(edge) ? cutOff(edge, span.network()) : List.of(), unterminated ? List.of(networkName(span.network())) : List.of(), List.of());
	}

	/** The devices on that side of a cut signal pair where there are fewer. */
	private List<String> cutOff(int edge, int network) {
		int beyond = 0;
		int all = 0;
		for (AttachedDevice each : wiring.devices()) {
			if (each.network() == network) {
				all++;
				beyond += signal.parts(edge, each.point()) ? 1 : 0;
			}
		}
		boolean fewerBeyond = 2 * beyond <= all;
		List<String> names = new ArrayList<>(fewerBeyond ? beyond : all - beyond);
		for (AttachedDevice each : wiring.devices()) {
			if (each.network() == network && signal.parts(edge, each.point()) == fewerBeyond) {
				names.add(each.device().name());
			}
		}
		return names;
	}

	private List<String> unpowered(IntPredicate parted) {
		List<String> names = new ArrayList<>();
		for (int i = 0; i < drawingPoints.length; i++) {
			if (parted.test(drawingPoints[i])) {
				names.add(drawing.get(i).device().name());
			}
		}
		return onceEach ? names : names.stream().distinct().toList();
	}

	/** Supplies, and what they hang on: all places where they enter are dead. */
	private void sources(List<Loss> all) {
		PowerPlant plant = boat.power();
		JoinedPoints sections = JoinedPoints.of(wiring, span -> wiring.spans().get(span).passes().supply());
		for (Bank bank : plant.banks()) {
			source(all, Loss.What.SOURCE, bank.name(), sections);
		}
		for (Converter converter : plant.converters()) {
			source(all, Loss.What.SOURCE, converter.name(), sections);
		}
		for (Supply each : plant.supplies()) {
			source(all, Loss.What.SUPPLY, each.name(), sections);
		}
	}

	private void source(List<Loss> all, Loss.What what, String failing, JoinedPoints sections) {
		Set<Integer> alive = new HashSet<>();
		Set<Integer> dead = new HashSet<>();
		for (SupplyEntry entry : wiring.entries()) {
			(hangsOn(entry.supply(), failing, new HashSet<>()) ? dead : alive).add(sections.first(entry.point()));
		}
		dead.removeAll(alive);
		all.add(new Loss(what, failing, Optional.empty(), Optional.empty(), unpowered(point -> dead.contains(sections.first(point))), List.of(), List.of(), List.of()));
	}

	private boolean hangsOn(String name, String failing, Set<String> seen) {
		if (name.equals(failing)) {
			return true;
		}
		if (!seen.add(name)) {
			return false;
		}
		Optional<String> behind = boat.power().supplies().stream().filter(each -> each.name().equals(name)).findFirst().flatMap(Supply::from)
				.or(() -> boat.power().converters().stream().filter(each -> each.name().equals(name)).findFirst().flatMap(Converter::from));
		return behind.map(each -> hangsOn(each, failing, seen)).orElse(false);
	}

	private void bridges(List<Loss> all) {
		Map<String, Set<Integer>> networksOf = new LinkedHashMap<>();
		wiring.devices().forEach(each -> networksOf.computeIfAbsent(each.device().name(), none -> new LinkedHashSet<>()).add(each.network()));
		networksOf.forEach((device, networks) -> {
			if (networks.size() > 1) {
				all.add(new Loss(Loss.What.BRIDGE, device, Optional.empty(), Optional.empty(), List.of(), List.of(), List.of(),
						networks.stream().map(this::networkName).toList()));
			}
		});
	}

	private String networkName(int network) {
		return boat.networks().get(network).name();
	}
}
