/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.plugin;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The list of those that a user trusts.
 */
class TrustedPluginsTest {

	private static final LocalDate DAY = LocalDate.of(2030, 1, 1);

	@TempDir
	Path folder;

	private static HousePlugin plugin(int number) {
		return new HousePlugin("rules/r%d.jar".formatted(number), "yard.rules" + number, "1.0.0", checksum(number), List.of(), Optional.empty(), new byte[0]);
	}

	private static String checksum(int number) {
		return "%064x".formatted(number);
	}

	@Test
	void manyWhoTrustAtOnceLoseNothing() throws Exception {
		List<Callable<Void>> changes = IntStream.range(0, 40).<Callable<Void>>mapToObj(number -> () -> {
			new TrustedPlugins(folder).trust(plugin(number), DAY);
			return null;
		}).toList();
		ExecutorService threads = Executors.newFixedThreadPool(8);
		try {
			for (Future<Void> each : threads.invokeAll(changes)) {
				each.get();
			}
		} finally {
			threads.shutdown();
		}
		assertEquals(IntStream.range(0, 40).mapToObj(TrustedPluginsTest::checksum).collect(Collectors.toSet()), Set.copyOf(new TrustedPlugins(folder).checksums()));
	}

	@Test
	void whatAPersonWroteIntoTheListStays() throws IOException {
		TrustedPlugins trust = new TrustedPlugins(folder);
		Files.writeString(trust.file(), "# ours\n" + checksum(1) + "  of the design office\n");
		trust.trust(plugin(2), DAY);
		trust.distrust(checksum(1));
		assertEquals(List.of("# ours", checksum(2) + "  yard.rules2 1.0.0, since 2030-01-01"), Files.readAllLines(trust.file()));
	}
}
