/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.analysis.serial.SentenceOnLine;
import hullwright.analysis.traffic.PassedMessage;
import hullwright.network.Boat;
import hullwright.network.FittedDevice;
import hullwright.network.SerialLine;
import hullwright.network.data.Showing;
import hullwright.network.data.Taking;
import hullwright.network.data.Wanting;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Who tells what to whom on a boat.
 *
 * @param carriers what each network, serial line and wireless hop carries
 * @param wants what devices cannot do without, and what comes of it
 * @param shows what devices show if it comes
 * @param shared messages that several devices tell on one network
 * @param doubled the same data told twice on one carrier
 * @param loops what goes round in circles
 * @param unused what devices tell and nobody wants or shows
 * @param instances the data instances on board
 * @param missingMaps messages that gateways are asked for and have no map to
 * @param passedOn what bridges and gateways bring into networks
 * @param problems what cannot be as the text says
 */
public record DataFlow(List<CarrierTraffic> carriers, List<WantedData> wants, List<ShownData> shows, List<SeveralSources> shared,
		List<DoubledData> doubled, List<EchoLoop> loops, List<DataSource> unused, List<DataInstances> instances, List<MissingMap> missingMaps,
		List<PassedMessage> passedOn, List<DataProblem> problems) {

	public DataFlow {
		carriers = List.copyOf(carriers);
		wants = List.copyOf(wants);
		shows = List.copyOf(shows);
		shared = List.copyOf(shared);
		doubled = List.copyOf(doubled);
		loops = List.copyOf(loops);
		unused = List.copyOf(unused);
		instances = List.copyOf(instances);
		missingMaps = List.copyOf(missingMaps);
		passedOn = List.copyOf(passedOn);
		problems = List.copyOf(problems);
	}

	/** Follows all data of a boat. */
	public static DataFlow of(Boat boat) {
		Attachments attachments = Attachments.of(boat);
		StreamGraph graph = new StreamGraph(boat, attachments);
		StreamTimings timings = new StreamTimings(graph);
		StreamSources sources = new StreamSources();
		Listening listening = new Listening(attachments, graph);
		Set<DataProblem> problems = new LinkedHashSet<>(graph.problems());
		Reception reception = new Reception(listening, sources, timings);
		StreamDelays delays = new StreamDelays(boat, attachments, timings, line -> sentencesOn(line, graph, timings));
		MissingMaps maps = new MissingMaps(boat, attachments, listening);
		Wants wants = new Wants(listening, new DataPaths(timings, delays), sources, reception, maps, problems);
		List<WantedData> wanted = new ArrayList<>();
		List<ShownData> shown = new ArrayList<>();
		Set<Stream> heard = new LinkedHashSet<>();
		for (FittedDevice device : attachments.devices()) {
			for (Wanting each : device.model().data().wants()) {
				wanted.add(wants.of(device, each));
				each.uses().forEach(use -> heard.addAll(listening.heard(device, use, each.port())));
			}
			for (Showing each : device.model().data().shows()) {
				shown.add(reception.shown(device, each));
				each.uses().forEach(use -> heard.addAll(listening.heard(device, use, each.port())));
			}
			device.settings().takes().forEach(each -> silent(device, each, listening, reception, problems));
		}
		Loops loops = new Loops(graph);
		SharedData shared = new SharedData(attachments, graph, timings, sources, loops,
				stream -> heard.contains(stream) || stream.outputs.stream().anyMatch(each -> each.how == ToldMessage.How.TURNED));
		List<MissingMap> missingMaps = new ArrayList<>(wants.missing());
		missingMaps.addAll(maps.onLines(graph));
		return new DataFlow(carriers(attachments, graph, timings, sources), wanted, shown, shared.several(), shared.doubled(), loops.all(),
				UnusedData.of(attachments, graph, listening), DataInstances.of(graph),
				missingMaps, new PassedOn(timings).of(attachments, graph),
				List.copyOf(problems));
	}

	private static void silent(FittedDevice device, Taking taking, Listening listening, Reception reception, Set<DataProblem> problems) {
		if (listening.anywhere(taking.use()).stream().noneMatch(stream -> reception.isFrom(stream, taking.device()))) {
			problems.add(new DataProblem.TakesFromSilent(device.name(), taking.use(), taking.device()));
		}
	}

	private static List<CarrierTraffic> carriers(Attachments attachments, StreamGraph graph, StreamTimings timings, StreamSources sources) {
		return attachments.carriers().stream().map(carrier -> new CarrierTraffic(carrier, graph.on(carrier).stream()
				.map(each -> new ToldMessage(each.teller(), each.use, each.instance, timings.of(each), each.how, heard(each), sources.of(each)))
				.collect(Collectors.toList()))).toList();
	}

	private static List<ToldMessage.Heard> heard(Stream stream) {
		return stream.inputs.isEmpty() ? List.of() : stream.inputs.stream().flatMap(List::stream)
				.map(each -> new ToldMessage.Heard(each.carrier(), each.teller(), each.use)).distinct().toList();
	}

	private static List<SentenceOnLine> sentencesOn(SerialLine line, StreamGraph graph, StreamTimings timings) {
		return graph.on(new Carrier(Carrier.Kind.SERIAL_LINE, line.name())).stream()
				.map(each -> new SentenceOnLine(each.teller(), each.use, timings.of(each))).toList();
	}

	/** The sentences that go over a serial line. */
	public List<SentenceOnLine> sentencesOn(SerialLine line) {
		return on(line.name()).stream().map(each -> new SentenceOnLine(each.teller(), each.use(), each.timing())).toList();
	}

	/** What a carrier carries, by its qualified name; nothing if the boat has none of that name. */
	public List<ToldMessage> on(String carrier) {
		return carriers.stream().filter(each -> each.carrier().name().equals(carrier)).findFirst().map(CarrierTraffic::messages).orElse(List.of());
	}
}
