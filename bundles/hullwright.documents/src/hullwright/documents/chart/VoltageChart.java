/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.chart;

import hullwright.analysis.Figures;
import hullwright.analysis.electrics.StateElectrics;
import hullwright.analysis.line.BackboneLength;
import hullwright.analysis.power.DeviceReading;
import hullwright.analysis.power.PowerFlow;
import hullwright.analysis.power.SpanReading;
import hullwright.analysis.wiring.Medium;
import hullwright.documents.scene.Extent;
import hullwright.documents.scene.Ink;
import hullwright.documents.scene.Point;
import hullwright.documents.scene.Scene;
import hullwright.documents.scene.Shape;
import hullwright.documents.scene.Stroke;
import hullwright.network.Backbone;
import hullwright.network.CableRun;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.quantity.Length;
import hullwright.quantity.Voltage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The voltage over the length of each backbone, in the order of the text, with the devices where they hang and the lowest and
 * highest voltage that each works at.
 */
final class VoltageChart {

	private static final double MARGIN = 20;
	private static final double LEFT = 70;
	private static final double WIDTH = 640;
	private static final double HEIGHT = 220;
	private static final double BETWEEN = 64;

	private final Figures figures;
	private final PowerFlow flow;
	private final String title;
	private final List<Shape> shapes = new ArrayList<>();
	private final List<List<String>> table = new ArrayList<>(List.of(List.of("network", "device", "from the start, m", "voltage, V", "lowest it works at, V")));

	VoltageChart(Figures figures, StateElectrics state, PowerCondition condition) {
		this.figures = figures;
		flow = condition.of(state);
		title = "Voltage along the backbone, " + condition.title().toLowerCase(Locale.ROOT)
				+ state.state().map(each -> ", " + (each.title().isEmpty() ? Names.simple(each.name()) : each.title())).orElse("");
	}

	/** A stretch of the line, or a device beside it. */
	private record Sample(double metres, double volts) {
	}

	private record DevicePoint(FittedDevice device, double metres, DeviceReading reading) {
	}

	Chart chart() {
		shapes.add(new Shape.Words(new Point(MARGIN, MARGIN + 14), title, 15, true, Shape.Words.Align.START, Ink.TEXT));
		double y = MARGIN + 40;
		for (int i = 0; i < figures.boat().networks().size(); i++) {
			Network network = figures.boat().networks().get(i);
			for (Backbone backbone : network.backbones()) {
				backbone(network, backbone, i, y);
				y += HEIGHT + BETWEEN;
			}
		}
		return new Chart(new Scene(title, LEFT + WIDTH + 140, y, shapes), table);
	}

	private void backbone(Network network, Backbone backbone, int number, double top) {
		BackboneLength length = figures.lengthOf(network, backbone);
		List<List<Sample>> line = line(backbone, length);
		List<DevicePoint> devices = devices(network, backbone, length);
		devices.forEach(point -> table.add(List.of(Names.simple(network.name()), Names.simple(point.device().name()), metres(point.metres()),
				volts(point.reading().voltage()), point.device().model().power().lowest().map(VoltageChart::volts).orElse(""))));
		double most = Math.max(0.5, length.run().metres());
		double low = lowest(line, devices);
		double high = Math.max(low + 1, highest(line, devices));
		Frame frame = new Frame(top, most, Math.floor(low * 2 - 0.5) / 2, Math.ceil(high * 2 + 0.5) / 2);
		Ink ink = Ink.ofNetwork(number);
		axes(Names.simple(network.name()), frame);
		for (List<Sample> piece : line) {
			if (piece.size() > 1) {
				shapes.add(new Shape.Thing(network.name(), Names.simple(network.name()), new Extent(0, 0, 0, 0),
						List.of(new Shape.Run(piece.stream().map(each -> frame.point(each.metres, each.volts)).toList(), Stroke.of(ink, 2.2)))));
			}
		}
		devices.forEach(point -> device(point, frame, ink));
	}

	/** The scale of one backbone. */
	private record Frame(double top, double metres, double low, double high) {
		Point point(double atMetres, double atVolts) {
			return new Point(LEFT + WIDTH * atMetres / metres, top + HEIGHT * (high - Math.min(high, Math.max(low, atVolts))) / (high - low));
		}
	}

	/** The pieces of the line that are fed, element by element of the backbone. */
	private List<List<Sample>> line(Backbone backbone, BackboneLength length) {
		Map<String, List<SpanReading>> byElement = new HashMap<>();
		// a contact is named after the cable, too, and takes no length
		flow.spans().stream().filter(reading -> reading.span().medium() instanceof Medium.Conductors).forEach(reading -> byElement.computeIfAbsent(reading.span().element(), none -> new ArrayList<>()).add(reading));
		List<List<Sample>> pieces = new ArrayList<>();
		List<Sample> piece = new ArrayList<>();
		for (int i = 0; i < backbone.elements().size(); i++) {
			Element element = backbone.elements().get(i);
			if (element instanceof CableRun cable) {
				double from = length.positions().get(i).metres();
				for (SpanReading reading : byElement.getOrDefault(cable.name(), List.of())) {
					if (reading.start().volts() > 0 && reading.end().volts() > 0) {
						piece.add(new Sample(from, reading.start().volts()));
						piece.add(new Sample(from + cable.length().metres(), reading.end().volts()));
					} else {
						pieces.add(piece);
						piece = new ArrayList<>();
					}
				}
			}
		}
		pieces.add(piece);
		return pieces;
	}

	private List<DevicePoint> devices(Network network, Backbone backbone, BackboneLength length) {
		Map<String, Double> at = new HashMap<>();
		List<DevicePoint> points = new ArrayList<>();
		for (int i = 0; i < backbone.elements().size(); i++) {
			at.put(backbone.elements().get(i).name(), length.positions().get(i).metres());
			if (backbone.elements().get(i) instanceof Fitting fitting) {
				double here = length.positions().get(i).metres();
				fitting.details().device().ifPresent(device -> reading(device).ifPresent(reading -> points.add(new DevicePoint(device, here, reading))));
			}
		}
		for (Drop drop : network.drops()) {
			Double here = at.get(drop.from().part());
			if (here != null && drop.device().isPresent()) {
				reading(drop.device().get()).ifPresent(reading -> points.add(new DevicePoint(drop.device().get(), here, reading)));
			}
		}
		return points;
	}

	private Optional<DeviceReading> reading(FittedDevice device) {
		return flow.of(device.name()).filter(DeviceReading::fed);
	}

	private static double lowest(List<List<Sample>> line, List<DevicePoint> devices) {
		double low = line.stream().flatMap(List::stream).mapToDouble(Sample::volts).min().orElse(9);
		for (DevicePoint point : devices) {
			low = Math.min(low, point.reading().voltage().volts());
			low = Math.min(low, point.device().model().power().lowest().map(Voltage::volts).orElse(low));
		}
		return low;
	}

	private static double highest(List<List<Sample>> line, List<DevicePoint> devices) {
		double high = line.stream().flatMap(List::stream).mapToDouble(Sample::volts).max().orElse(12);
		for (DevicePoint point : devices) {
			high = Math.max(high, point.reading().voltage().volts());
		}
		return high;
	}

	private void axes(String network, Frame frame) {
		shapes.add(new Shape.Words(new Point(LEFT, frame.top() - 8), network, 12, true, Shape.Words.Align.START, Ink.TEXT));
		double step = frame.high() - frame.low() > 6 ? 2 : frame.high() - frame.low() > 3 ? 1 : 0.5;
		for (double volts = Math.ceil(frame.low() / step) * step; volts <= frame.high() + 1e-9; volts += step) {
			Point at = frame.point(0, volts);
			shapes.add(new Shape.Run(List.of(at, new Point(LEFT + WIDTH, at.y())), Stroke.of(Ink.PLACE_EDGE, 0.7)));
			shapes.add(new Shape.Words(new Point(LEFT - 8, at.y() + 4), String.format(Locale.ROOT, "%.1f V", volts), 10, false, Shape.Words.Align.END, Ink.SOFT_TEXT));
		}
		double stride = frame.metres() > 60 ? 20 : frame.metres() > 25 ? 5 : frame.metres() > 8 ? 2 : 1;
		for (double metres = 0; metres <= frame.metres() + 1e-9; metres += stride) {
			Point at = frame.point(metres, frame.low());
			shapes.add(new Shape.Run(List.of(at, new Point(at.x(), at.y() + 4)), Stroke.of(Ink.PLACE_EDGE, 1)));
			shapes.add(new Shape.Words(new Point(at.x(), at.y() + 16), new Length(metres).toString(), 10, false, Shape.Words.Align.MIDDLE, Ink.SOFT_TEXT));
		}
	}

	/** A device as a disc at its voltage, under it its limit as a bar; what lies under the limit is red. */
	private void device(DevicePoint point, Frame frame, Ink ink) {
		List<Shape> parts = new ArrayList<>();
		Point at = frame.point(point.metres(), point.reading().voltage().volts());
		boolean tooLow = point.reading().aboveLowest().filter(left -> left.volts() < 0).isPresent();
		parts.add(new Shape.Disc(at, 4, Optional.of(tooLow ? Ink.ERROR : Ink.THING), Optional.of(Stroke.of(tooLow ? Ink.ERROR : ink, 1.6))));
		point.device().model().power().lowest().ifPresent(limit -> {
			Point lowest = frame.point(point.metres(), limit.volts());
			parts.add(new Shape.Run(List.of(new Point(lowest.x() - 7, lowest.y()), new Point(lowest.x() + 7, lowest.y())), Stroke.of(Ink.ERROR, 2)));
			parts.add(new Shape.Run(List.of(at, lowest), new Stroke(Ink.PLACE_EDGE, 1, Stroke.Dash.SHORT)));
		});
		String tip = Names.simple(point.device().name()) + "\n" + volts(point.reading().voltage()) + " V, "
				+ point.reading().aboveLowest().map(left -> volts(left) + " V above the lowest that it works at").orElse("the lowest it works at is not stated");
		shapes.add(new Shape.Thing(point.device().name(), tip, new Extent(at.x() - 7, at.y() - 7, 14, 14), parts));
	}

	private static String volts(Voltage voltage) {
		return String.format(Locale.ROOT, "%.2f", voltage.volts());
	}

	private static String metres(double value) {
		return String.format(Locale.ROOT, "%.1f", value);
	}
}
