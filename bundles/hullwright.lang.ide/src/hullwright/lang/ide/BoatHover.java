/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import hullwright.analysis.Figures;
import hullwright.analysis.electrics.StateElectrics;
import hullwright.analysis.power.DeviceReading;
import hullwright.analysis.power.PowerFlow;
import hullwright.analysis.power.SpanReading;
import hullwright.analysis.traffic.BusFigures;
import hullwright.analysis.wiring.Medium;
import hullwright.network.Backbone;
import hullwright.network.Boat;
import hullwright.network.CableRun;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.Origin;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What the boat in view is like at a place of its text. Every figure comes from the analyses; the worst of all power states is
 * chosen, and each says which case it is of.
 */
final class BoatHover {

	/** A thing on board that stands at the place, and what is known of it in the network. */
	private record Found(Origin origin, List<String> lines) {
	}

	private final LiveBoat live;
	private final String file;
	private final int offset;

	private BoatHover(LiveBoat live, String file, int offset) {
		this.live = live;
		this.file = file;
		this.offset = offset;
	}

	/** Lines to show for a place in a file; none if the boat in view has nothing there. */
	static List<String> at(LiveBoat live, Path file, int offset) {
		if (live.boat().isEmpty() || !file.startsWith(live.folder())) {
			return List.of();
		}
		String relative = live.folder().relativize(file).toString().replace('\\', '/');
		BoatHover hover = new BoatHover(live, relative, offset);
		List<String> lines = new ArrayList<>(live.figures(hover::lines).orElse(List.of()));
		if (!lines.isEmpty()) {
			lines.add(0, "On the boat in view" + (live.outdated().isPresent() ? ", as the text was before it stopped being understood" : "") + ":");
		}
		return lines;
	}

	private List<String> lines(Figures figures) {
		Boat boat = figures.boat();
		return IntStream.range(0, boat.networks().size()).boxed().flatMap(index -> found(figures, boat.networks().get(index), figures.buses().get(index)))
				.min(Comparator.comparingInt(each -> each.origin().length())).map(Found::lines).orElse(List.of());
	}

	private Stream<Found> found(Figures figures, Network network, BusFigures bus) {
		List<Found> found = new ArrayList<>();
		for (Backbone backbone : network.backbones()) {
			double metres = 0;
			for (Element element : backbone.elements()) {
				double before = metres;
				metres += element instanceof CableRun cable ? cable.length().metres() : 0;
				double upToHere = metres;
				if (isHere(element.origin())) {
					List<String> lines = new ArrayList<>();
					lines.add(element instanceof CableRun
							? String.format(Locale.ROOT, "from %.1f m to %.1f m along the backbone", before, upToHere)
							: String.format(Locale.ROOT, "%.1f m along the backbone", upToHere));
					lines.addAll(current(figures, element));
					if (element instanceof Fitting fitting) {
						fitting.details().device().ifPresent(device -> lines.addAll(device(figures, bus, device.name())));
					}
					found.add(new Found(element.origin(), lines));
				}
			}
		}
		for (Drop drop : network.drops()) {
			drop.device().filter(device -> isHere(device.origin()) || isHere(drop.origin())).ifPresent(device -> {
				List<String> lines = new ArrayList<>();
				lines.add("drop of " + figures.lengthOf(drop).total());
				lines.addAll(device(figures, bus, device.name()));
				found.add(new Found(device.origin(), lines));
			});
		}
		return found.stream();
	}

	private static List<String> device(Figures figures, BusFigures bus, String device) {
		List<String> lines = new ArrayList<>();
		Stream<DeviceReading> readings = figures.electrics().states().stream().map(StateElectrics::lowest).flatMap(flow -> flow.of(device).stream())
				.filter(DeviceReading::fed);
		readings.min(Comparator.comparing(DeviceReading::voltage)).ifPresent(reading -> lines.add(
				String.format(Locale.ROOT, "%.2f V, %.2f A at the lowest supply voltage with warm wires", reading.voltage().volts(), reading.current().amperes())
						+ reading.aboveLowest().map(left -> String.format(Locale.ROOT, "; %.2f V %s", Math.abs(left.volts()), left.volts() < 0 ? "too low" : "left")).orElse("")));
		bus.load().senders().stream().filter(each -> each.sender().equals(device)).findFirst().ifPresent(sender -> lines.add(
				String.format(Locale.ROOT, "%.1f %% of the bus by what it sends regularly", 100 * sender.regular().worstShareOf(bus.load().bus()))));
		return lines;
	}

	/** Of a cable what its wires carry, which its plugs may be rated above. */
	private static List<String> current(Figures figures, Element element) {
		Stream<PowerFlow> flows = figures.electrics().states().stream().flatMap(state -> Stream.of(state.lowest(), state.starting()));
		return flows.flatMap(flow -> flow.spans().stream()).filter(reading -> reading.span().element().equals(element.name())
				&& (!(element instanceof CableRun) || reading.span().medium() instanceof Medium.Conductors))
				.max(Comparator.comparing(SpanReading::larger)).filter(reading -> reading.larger().amperes() >= 0.005)
				.map(reading -> String.format(Locale.ROOT, "at most %.2f A", reading.larger().amperes())
						+ reading.rated().map(rated -> " of " + rated + " that it is rated for").orElse("")).stream().toList();
	}

	private boolean isHere(Origin origin) {
		return origin.file().equals(file) && origin.offset() <= offset && offset <= origin.offset() + origin.length();
	}
}
