/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.Boat;
import hullwright.network.SerialLine;
import hullwright.network.WirelessHop;
import hullwright.network.data.Sentence;
import hullwright.quantity.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The ways by which a stream comes from its sources. Each carrier is taken once on a way.
 */
final class DataPaths {

	/** Ways of one datum beyond this number are left out. */
	static final int MOST = 64;

	/** A character on a serial line: start, eight data bits, stop (installation manuals of AIS and radio units). */
	private static final int BITS_OF_CHARACTER = 10;

	private final Map<String, SerialLine> lines = new HashMap<>();
	private final Map<String, WirelessHop> hops = new HashMap<>();
	private final StreamTimings timings;

	DataPaths(Boat boat, StreamTimings timings) {
		this.timings = timings;
		boat.serialLines().forEach(each -> lines.put(each.name(), each));
		boat.wirelessHops().forEach(each -> hops.put(each.name(), each));
	}

	/** The ways of a stream that arrives. */
	List<DataPath> to(Stream arriving) {
		List<DataPath> paths = new ArrayList<>();
		walk(arriving, new ArrayList<>(), new HashSet<>(), arriving, paths);
		return paths;
	}

	private void walk(Stream stream, List<Stream> behind, Set<Carrier> taken, Stream arriving, List<DataPath> paths) {
		if (paths.size() > MOST || !taken.add(stream.carrier())) {
			return;
		}
		behind.add(stream);
		if (stream.how == ToldMessage.How.SENT) {
			paths.add(path(behind, arriving));
		}
		stream.inputs.forEach(alternatives -> alternatives.forEach(each -> walk(each, behind, taken, arriving, paths)));
		behind.remove(behind.size() - 1);
		taken.remove(stream.carrier());
	}

	private DataPath path(List<Stream> backwards, Stream arriving) {
		List<Stream> way = new ArrayList<>(backwards);
		Collections.reverse(way);
		double seconds = 0;
		List<String> unstated = new ArrayList<>();
		for (Stream each : way) {
			Optional<Double> delay = delay(each);
			delay.or(() -> {
				unstated.add(each.carrier().name());
				return Optional.empty();
			});
			seconds += delay.orElse(0.0) + each.turning.flatMap(turning -> turning.atMostEvery()).map(Duration::seconds).orElse(0.0);
		}
		Stream first = way.get(0);
		return new DataPath(new DataSource(first.teller(), first.use, first.instance),
				way.stream().map(each -> new DataPath.Leg(each.carrier(), each.teller(), each.how, each.use)).toList(),
				timings.leastOften(arriving), new Duration(seconds), unstated);
	}

	/** How long a message is on a carrier, in seconds; nothing if no text tells. */
	private Optional<Double> delay(Stream stream) {
		return switch (stream.carrier().kind()) {
		case NETWORK -> Optional.of(0.0);
		case SERIAL_LINE -> lines.get(stream.carrier().name()).rate().filter(rate -> rate.si() > 0)
				.flatMap(rate -> stream.use.message() instanceof Sentence sentence && sentence.length() > 0
						? Optional.of(sentence.length() * BITS_OF_CHARACTER / rate.si()) : Optional.empty());
		case WIRELESS -> hops.get(stream.carrier().name()).delay()
				.or(() -> stream.at.port().flatMap(port -> Optional.ofNullable(stream.at.device().model().radios().get(port))).flatMap(radio -> radio.delay()))
				.map(Duration::seconds);
		};
	}
}
