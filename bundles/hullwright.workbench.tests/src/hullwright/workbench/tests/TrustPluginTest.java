/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IProject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.junit.jupiter.api.Test;

/**
 * A plugin with rules of the house is off until a person who has seen what it is trusts it. The jar of the test holds no class that
 * can be loaded: once it is trusted, that is what the window says of it.
 */
class TrustPluginTest {

	private static final String TRIED = "cannot be used";

	static byte[] jar() throws IOException {
		Manifest manifest = new Manifest();
		Attributes attributes = manifest.getMainAttributes();
		attributes.put(Attributes.Name.MANIFEST_VERSION, "1.0");
		attributes.putValue("Bundle-ManifestVersion", "2");
		attributes.putValue("Bundle-SymbolicName", "yard.window;singleton:=true");
		attributes.putValue("Bundle-Version", "1.0.0");
		attributes.putValue("Require-Bundle", "hullwright.rules;bundle-version=\"[0.1,0.2)\"");
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		try (JarOutputStream jar = new JarOutputStream(bytes, manifest)) {
			jar.putNextEntry(new JarEntry("plugin.xml"));
			jar.write("<plugin><extension point=\"hullwright.rules.rule\"><rule class=\"yard.Window\"/></extension></plugin>".getBytes(StandardCharsets.UTF_8));
			jar.putNextEntry(new JarEntry("yard/Window.class"));
			jar.write("no class".getBytes(StandardCharsets.UTF_8));
		}
		return bytes.toByteArray();
	}

	@Test
	void aPluginIsTrustedOnlyAfterItHasShownWhatItIs() throws Exception {
		IProject project = Bench.create("trust", Map.of("yard.hull", Bench.PROFILE, "dinghy.hull", SmallBoat.TEXT));
		try {
			project.getFolder("rules").create(true, true, null);
			IFile jar = project.getFile("rules/window.jar");
			jar.create(jar(), true, false, null);
			IMarker off = Window.until("the plugin is listed as off", () -> marker(jar, "project/plugin-off"), Optional::isPresent).orElseThrow();

			IMarkerResolution trust = Window.ui(() -> IDE.getMarkerHelpRegistry().getResolutions(off)[0]);
			assertEquals("Trust this plugin\u2026", trust.getLabel());
			press(trust, off, "Cancel");
			assertTrue(marker(jar, "project/plugin-off").isPresent(), "who cancels trusts nothing");

			String shown = press(trust, off, "Trust");
			assertTrue(shown.contains("yard.window 1.0.0") && shown.contains("yard.Window") && shown.matches("(?s).*SHA-256: [0-9a-f]{64}.*"), shown);
			IMarker tried = Window.until("it is trusted and tried", () -> marker(jar, "project/plugin-refused"), Optional::isPresent).orElseThrow();
			assertTrue(tried.getAttribute(IMarker.MESSAGE, "").contains(TRIED), tried.getAttribute(IMarker.MESSAGE, ""));
		} finally {
			project.delete(true, true, null);
		}
	}

	private static Optional<IMarker> marker(IFile jar, String rule) throws Exception {
		return Arrays.stream(jar.findMarkers("hullwright.workbench.finding", true, 0)).filter(each -> rule.equals(each.getAttribute("rule", ""))).findFirst();
	}

	/** Runs the fix and presses a button of the question that it asks; returns the question. */
	private static String press(IMarkerResolution trust, IMarker marker, String button) {
		PlatformUI.getWorkbench().getDisplay().asyncExec(() -> trust.run(marker));
		Shell dialog = Window.until("the question is asked", () -> Window.ui(() -> Arrays.stream(Display.getCurrent().getShells())
				.filter(shell -> shell.isVisible() && shell.getText().equals("Trust plugin")).findFirst().orElse(null)), found -> found != null);
		return Window.ui(() -> {
			String question = Window.below(dialog, Label.class).stream().map(Label::getText).collect(Collectors.joining("\n"));
			Window.below(dialog, Button.class).stream().filter(each -> each.getText().replace("&", "").equals(button)).findFirst().orElseThrow()
					.notifyListeners(SWT.Selection, new Event());
			return question;
		});
	}
}
