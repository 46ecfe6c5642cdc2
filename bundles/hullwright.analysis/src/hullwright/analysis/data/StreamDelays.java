/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.analysis.serial.SentenceOnLine;
import hullwright.analysis.serial.SerialLineFigures;
import hullwright.analysis.serial.Waiting;
import hullwright.network.Boat;
import hullwright.network.FittedDevice;
import hullwright.network.SerialLine;
import hullwright.network.WirelessHop;
import hullwright.network.data.Timing;
import hullwright.network.part.Radio;
import hullwright.quantity.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * How long messages are under way: on serial lines until their last character is out, waiting behind others included; on wireless
 * hops as long as the text states, else as long as the slower of the two radios does; in gateways until they tell again.
 */
final class StreamDelays {

	/**
	 * How long something takes.
	 *
	 * @param known what is known of it, at most
	 * @param unknown the qualified names of carriers and gateways that take some time of which nothing is known, or have no bound
	 */
	record Delay(Duration known, List<String> unknown) {
	}

	private final Map<String, Waiting> lines = new HashMap<>();
	private final Map<String, WirelessHop> hops = new HashMap<>();
	private final Attachments attachments;
	private final StreamTimings timings;

	/**
	 * @param sentences gives what goes over each serial line
	 */
	StreamDelays(Boat boat, Attachments attachments, StreamTimings timings, Function<SerialLine, List<SentenceOnLine>> sentences) {
		this.attachments = attachments;
		this.timings = timings;
		SerialLineFigures.of(boat, sentences).forEach(each -> lines.put(each.line().name(), each.waiting()));
		boat.wirelessHops().forEach(each -> hops.put(each.name(), each));
	}

	/** How long a way takes to a device that hears it. */
	Delay along(List<Stream> way, FittedDevice device) {
		double seconds = 0;
		List<String> unknown = new ArrayList<>();
		for (int i = 0; i < way.size(); i++) {
			Stream each = way.get(i);
			FittedDevice hearer = i + 1 < way.size() ? way.get(i + 1).at.device() : device;
			Optional<Double> carried = onCarrier(each, hearer);
			Optional<Double> kept = i == 0 ? Optional.of(0.0) : inGateway(each, way.get(i - 1));
			if (kept.isEmpty()) {
				unknown.add(each.teller());
			}
			if (carried.isEmpty()) {
				unknown.add(each.carrier().name());
			}
			seconds += kept.orElse(0.0) + carried.orElse(0.0);
		}
		return new Delay(new Duration(seconds), unknown);
	}

	private Optional<Double> onCarrier(Stream stream, FittedDevice hearer) {
		return switch (stream.carrier().kind()) {
		case NETWORK -> Optional.of(0.0);
		case SERIAL_LINE -> lines.get(stream.carrier().name()) instanceof Waiting.Bounded bounded ? Optional.of(bounded.longest().seconds())
				: Optional.empty();
		case WIRELESS -> hops.get(stream.carrier().name()).delay().map(Duration::seconds).or(() -> radios(stream, hearer));
		};
	}

	private Optional<Double> radios(Stream stream, FittedDevice hearer) {
		Optional<Double> slower = delayOf(stream.at);
		for (Attachment each : attachments.on(stream.carrier())) {
			if (each.hears() && each.device().name().equals(hearer.name())) {
				Optional<Double> other = delayOf(each);
				slower = other.isPresent() && slower.map(known -> other.get() > known).orElse(true) ? other : slower;
			}
		}
		return slower;
	}

	private static Optional<Double> delayOf(Attachment radio) {
		return radio.port().map(radio.device().model().radios()::get).flatMap(Radio::delay).map(Duration::seconds);
	}

	/** Until the gateway may tell again, and until it has all that it needs; nothing if that is not regular. */
	private Optional<Double> inGateway(Stream made, Stream input) {
		double pause = made.turning.flatMap(turning -> turning.atMostEvery()).map(Duration::seconds).orElse(0.0);
		Optional<Timing> others = timings.besides(made, input);
		return others.isEmpty() ? Optional.of(pause) : others.get().every().map(every -> Math.max(pause, every.seconds()));
	}
}
