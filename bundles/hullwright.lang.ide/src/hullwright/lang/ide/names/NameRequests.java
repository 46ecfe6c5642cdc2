/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.names;

import hullwright.lang.imports.BuiltInCatalogs;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.lsp4j.ChangeAnnotation;
import org.eclipse.lsp4j.DocumentHighlight;
import org.eclipse.lsp4j.DocumentHighlightKind;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PrepareRenameResult;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SnippetTextEdit;
import org.eclipse.lsp4j.TextDocumentEdit;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.xtext.ide.server.DocumentExtensions;
import org.eclipse.xtext.ide.server.UriExtensions;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.resource.XtextResource;

/**
 * What the protocol asks about names: where one is declared, where it is used, and how it is changed.
 */
public final class NameRequests {

	private final ProjectTexts texts;
	private final DocumentExtensions places = new DocumentExtensions();
	private final UriExtensions uris;
	private final Path builtInTexts;

	/**
	 * @param texts        where names are looked for
	 * @param uris         how URIs are spelled for the client
	 * @param builtInTexts where readable copies of the built-in catalogs are kept
	 */
	public NameRequests(ProjectTexts texts, UriExtensions uris, Path builtInTexts) {
		this.texts = texts;
		this.uris = uris;
		this.builtInTexts = builtInTexts;
	}

	/** Where the name at a place is declared: one location, or none. */
	public List<Location> definition(URI uri, Position position) {
		EObject element = meantAt(uri, position).orElse(null);
		return element == null ? List.of() : NamesInText.declaration(element).map(node -> location(element, node)).stream().toList();
	}

	private Location location(EObject element, INode name) {
		XtextResource resource = (XtextResource) element.eResource();
		Range range = places.newRange(resource, name.getOffset(), name.getEndOffset());
		URI home = resource.getURI();
		return new Location(BuiltInCatalogs.isBuiltIn(home) ? BuiltInText.of(home, builtInTexts) : uris.toUriString(home), range);
	}

	/** All places that name the thing named at a place, its declaration among them if wanted. */
	public List<Location> references(URI uri, Position position, boolean withDeclaration) {
		EObject element = meantAt(uri, position).orElse(null);
		List<Location> found = new ArrayList<>();
		if (element != null) {
			Uses.of(element, texts.thatMayName(element)).byText().forEach((text, uses) -> uses.stream()
					.filter(use -> withDeclaration || !use.declares())
					.forEach(use -> found.add(new Location(uris.toUriString(text.getURI()), range(text, use)))));
		}
		return found;
	}

	/** The same within one text, told apart by whether they declare or use it. */
	public List<DocumentHighlight> highlights(URI uri, Position position) {
		EObject element = meantAt(uri, position).orElse(null);
		List<DocumentHighlight> found = new ArrayList<>();
		if (element != null) {
			Uses.of(element, List.of(texts.at(uri))).byText().forEach((text, uses) -> uses.forEach(use -> found.add(
					new DocumentHighlight(range(text, use), use.declares() ? DocumentHighlightKind.Write : DocumentHighlightKind.Read))));
		}
		return found;
	}

	/** The name that can be changed here, or why none can. */
	public Outcome<PrepareRenameResult> prepareRename(URI uri, Position position) {
		return Outcome.of(() -> {
			Renaming renaming = Renaming.of(meantAt(uri, position).orElse(null));
			NameUse use = useAt(uri, position).orElseThrow();
			return new PrepareRenameResult(range(texts.at(uri), use), renaming.oldName());
		});
	}

	/**
	 * All edits that change the name at a place, or why they cannot be made. What they do not reach is told in annotations of
	 * the edit.
	 *
	 * @param warn told the same
	 */
	public Outcome<WorkspaceEdit> rename(URI uri, Position position, String newName, Consumer<String> warn) {
		return Outcome.of(() -> {
			Renaming renaming = Renaming.of(meantAt(uri, position).orElse(null));
			WorkspaceEdit whole = edit(renaming.to(newName.strip(), texts), newName.strip());
			texts.folder(uri).ifPresent(folder -> AcceptedNames.warnings(folder, renaming.oldName()).forEach(warning -> {
				whole.setChangeAnnotations(whole.getChangeAnnotations() == null ? new LinkedHashMap<>() : whole.getChangeAnnotations());
				whole.getChangeAnnotations().put(warning, new ChangeAnnotation(warning));
				warn.accept(warning);
			}));
			return whole;
		});
	}

	private WorkspaceEdit edit(Map<XtextResource, List<NameUse>> places, String newName) {
		WorkspaceEdit whole = new WorkspaceEdit(new ArrayList<>());
		places.forEach((text, uses) -> {
			List<Either<TextEdit, SnippetTextEdit>> edits = new ArrayList<>();
			uses.forEach(use -> edits.add(Either.forLeft(new TextEdit(range(text, use), newName))));
			URI file = text.getURI();
			whole.getDocumentChanges().add(Either.forLeft(
					new TextDocumentEdit(new VersionedTextDocumentIdentifier(uris.toUriString(file), texts.version(file)), edits)));
		});
		return whole;
	}

	private Optional<NameUse> useAt(URI uri, Position position) {
		XtextResource resource = texts.at(uri);
		return resource == null ? Optional.empty() : new NamesInText(resource).at(texts.offset(uri, position));
	}

	private Optional<EObject> meantAt(URI uri, Position position) {
		return useAt(uri, position).map(NameUse::meant);
	}

	private Range range(XtextResource text, NameUse use) {
		return places.newRange(text, use.offset(), use.end());
	}
}
