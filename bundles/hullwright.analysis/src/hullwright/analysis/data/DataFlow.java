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
import hullwright.network.data.SentMessage;
import hullwright.network.data.Taking;
import hullwright.network.data.Wanting;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Who tells what to whom on a boat.
 *
 * @param carriers what each network, serial line and wireless hop carries
 * @param wants what devices cannot do without, and what comes of it
 * @param shared messages that several devices tell on one network
 * @param doubled the same data told twice on one carrier
 * @param loops what goes round in circles
 * @param unused what devices tell and nobody wants or shows
 * @param problems what cannot be as the text says
 */
public record DataFlow(List<CarrierTraffic> carriers, List<WantedData> wants, List<SeveralSources> shared, List<DoubledData> doubled,
		List<EchoLoop> loops, List<DataSource> unused, List<DataProblem> problems) {

	public DataFlow {
		carriers = List.copyOf(carriers);
		wants = List.copyOf(wants);
		shared = List.copyOf(shared);
		doubled = List.copyOf(doubled);
		loops = List.copyOf(loops);
		unused = List.copyOf(unused);
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
		Wants wants = new Wants(listening, new DataPaths(boat, timings), sources, problems);
		List<WantedData> wanted = new ArrayList<>();
		Set<Stream> heard = new LinkedHashSet<>();
		for (FittedDevice device : attachments.devices()) {
			for (Wanting each : device.model().data().wants()) {
				wanted.add(wants.of(device, each));
				each.uses().forEach(use -> heard.addAll(listening.heard(device, use, each.port())));
			}
			device.model().data().shows().forEach(each -> each.uses().forEach(use -> heard.addAll(listening.heard(device, use, each.port()))));
			device.settings().takes().forEach(each -> silent(device, each, listening, sources, problems));
		}
		Loops loops = new Loops(graph);
		SharedData shared = new SharedData(attachments, graph, sources, loops,
				stream -> heard.contains(stream) || stream.outputs.stream().anyMatch(each -> each.how == ToldMessage.How.TURNED));
		return new DataFlow(carriers(attachments, graph, timings, sources), wanted, shared.several(), shared.doubled(), loops.all(),
				UnusedData.of(attachments, graph, listening), List.copyOf(problems));
	}

	private static void silent(FittedDevice device, Taking taking, Listening listening, StreamSources sources, Set<DataProblem> problems) {
		boolean tells = listening.anywhere(taking.use()).stream().flatMap(stream -> sources.of(stream).stream())
				.anyMatch(source -> source.device().equals(taking.device()));
		if (!tells) {
			problems.add(new DataProblem.TakesFromSilent(device.name(), taking.use(), taking.device()));
		}
	}

	private static List<CarrierTraffic> carriers(Attachments attachments, StreamGraph graph, StreamTimings timings, StreamSources sources) {
		return attachments.carriers().stream().map(carrier -> new CarrierTraffic(carrier, graph.on(carrier).stream()
				.map(each -> new ToldMessage(each.teller(), each.use, each.instance, timings.mostOften(each), each.how, heard(each), sources.of(each)))
				.collect(Collectors.toList()))).toList();
	}

	private static Optional<ToldMessage.Heard> heard(Stream stream) {
		return stream.how == ToldMessage.How.PASSED
				? stream.inputs.get(0).stream().findFirst().map(each -> new ToldMessage.Heard(each.carrier(), each.teller())) : Optional.empty();
	}

	/** The sentences that go over a serial line. */
	public List<SentenceOnLine> sentencesOn(SerialLine line) {
		return on(line.name()).stream().map(each -> new SentenceOnLine(each.teller(), each.use(), each.timing())).toList();
	}

	/** What bridges and gateways bring into networks. */
	public List<PassedMessage> passedOn() {
		List<PassedMessage> passed = new ArrayList<>();
		for (CarrierTraffic each : carriers) {
			if (each.carrier().kind() == Carrier.Kind.NETWORK) {
				each.messages().stream().filter(message -> message.how() != ToldMessage.How.SENT).forEach(message -> passed.add(passed(each.carrier(), message)));
			}
		}
		return passed;
	}

	private static PassedMessage passed(Carrier network, ToldMessage message) {
		return new PassedMessage(network.name(), message.teller(), new SentMessage(message.use(), message.timing(), message.instance(), Optional.empty()),
				message.heard().filter(heard -> heard.carrier().kind() == Carrier.Kind.NETWORK)
						.map(heard -> new PassedMessage.Heard(heard.carrier().name(), heard.teller())));
	}

	/** What a carrier carries, by its qualified name; nothing if the boat has none of that name. */
	public List<ToldMessage> on(String carrier) {
		return carriers.stream().filter(each -> each.carrier().name().equals(carrier)).findFirst().map(CarrierTraffic::messages).orElse(List.of());
	}
}
