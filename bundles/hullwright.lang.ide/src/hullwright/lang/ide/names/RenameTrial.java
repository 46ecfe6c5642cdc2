/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.names;

import hullwright.lang.HullLanguage;
import hullwright.lang.LanguageProblem;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.IResourceFactory;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.CheckMode;
import org.eclipse.xtext.validation.IResourceValidator;
import org.eclipse.xtext.validation.Issue;

/**
 * Reads the texts of a project as they would be after a rename, and looks whether every name still means what it meant.
 */
final class RenameTrial {

	/** What a name that is taken or cannot stand here leads to; the first tells most. */
	private static final List<String> TELLING = List.of(LanguageProblem.NAME_TAKEN, LanguageProblem.NOT_UNDERSTOOD, LanguageProblem.UNKNOWN_NAME);

	private final Map<XtextResource, XtextResource> afterBefore = new LinkedHashMap<>();

	private RenameTrial() {
	}

	/** Refuses a rename after which some name would mean something else, or nothing. */
	static void check(List<XtextResource> before, Map<XtextResource, String> changed, String newName) throws RenameRefused {
		RenameTrial trial = new RenameTrial();
		trial.read(before, changed);
		for (Map.Entry<XtextResource, XtextResource> text : trial.afterBefore.entrySet()) {
			if (changed.containsKey(text.getKey())) {
				refuseProblems(text.getValue(), newName);
			}
		}
		for (Map.Entry<XtextResource, XtextResource> text : trial.afterBefore.entrySet()) {
			refuseOtherMeaning(text.getKey(), text.getValue(), newName);
		}
	}

	private void read(List<XtextResource> before, Map<XtextResource, String> changed) {
		XtextResourceSet set = HullLanguage.services().getInstance(XtextResourceSet.class);
		set.getResourceFactoryRegistry().getExtensionToFactoryMap().put("hull", HullLanguage.services().getInstance(IResourceFactory.class));
		set.getLoadOptions().put(XtextResource.OPTION_ENCODING, StandardCharsets.UTF_8.name());
		for (XtextResource text : before) {
			afterBefore.put(text, (XtextResource) set.createResource(text.getURI()));
		}
		afterBefore.forEach((old, fresh) -> {
			String text = changed.getOrDefault(old, old.getParseResult() == null ? "" : old.getParseResult().getRootNode().getText());
			try {
				fresh.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), set.getLoadOptions());
			} catch (IOException e) {
				throw new IllegalStateException("a text in memory can be read", e);
			}
		});
	}

	private static void refuseProblems(XtextResource after, String newName) throws RenameRefused {
		String quoted = "'" + newName + "'";
		Optional<Issue> telling = HullLanguage.services().getInstance(IResourceValidator.class)
				.validate(after, CheckMode.ALL, CancelIndicator.NullImpl).stream()
				.filter(issue -> TELLING.contains(issue.getCode()) && issue.getMessage().contains(quoted))
				.min(Comparator.comparingInt(issue -> TELLING.indexOf(issue.getCode())));
		if (telling.isPresent()) {
			throw new RenameRefused(sentence(telling.get().getMessage()) + " (" + place(after.getURI(), telling.get().getLineNumber()) + ")");
		}
	}

	private static void refuseOtherMeaning(XtextResource before, XtextResource after, String newName) throws RenameRefused {
		List<NameUse> old = new NamesInText(before).all();
		List<NameUse> fresh = new NamesInText(after).all();
		if (old.size() != fresh.size()) {
			throw new RenameRefused("With '" + newName + "' the text of " + before.getURI().lastSegment() + " would no longer be understood");
		}
		for (int at = 0; at < fresh.size(); at++) {
			if (fresh.get(at).text().equals(newName) && !meaning(old.get(at)).equals(meaning(fresh.get(at)))) {
				INode node = NodeModelUtils.findLeafNodeAtOffset(after.getParseResult().getRootNode(), fresh.get(at).offset());
				throw new RenameRefused("'" + newName + "' would no longer say which thing is meant in "
						+ place(after.getURI(), node == null ? 1 : node.getStartLine()) + ": another one is called so, too");
			}
		}
	}

	/** Where what is meant stands; a rename changes no order, so this stays the same. */
	private static List<Object> meaning(NameUse use) {
		EObject meant = use.meant();
		List<Object> meaning = new ArrayList<>();
		if (meant != null) {
			meaning.add(EcoreUtil.getURI(meant));
		}
		return meaning;
	}

	private static String place(URI uri, Integer line) {
		return uri.lastSegment() + ", line " + line;
	}

	private static String sentence(String message) {
		return Character.toUpperCase(message.charAt(0)) + message.substring(1);
	}
}
