"""Makes reports and reads them back as others do.

read_report.py PROGRAM FOLDER STUDY...
The page is parsed strictly and asks for nothing; its tables, and the text of the PDF, carry the
figures of result.json; pages of the PDF are not blank and their fonts are embedded.
"""

import json
import pathlib
import re
import shutil
import subprocess
import sys
import urllib.parse

import html5lib

NUMBER = re.compile(r"-?\d+(?:\.\d+)?")


def said(*command):
    return subprocess.run(command, stdout=subprocess.PIPE, check=True).stdout


def report_of(program, study, folder):
    run = subprocess.run([program, "report", study, "--out", folder, "--quiet"], check=False,
                         stdout=subprocess.DEVNULL)
    assert run.returncode in (0, 1, 4), f"{study}: exit code {run.returncode}"
    return pathlib.Path(folder)


def parsed(page):
    """Throws at the first thing that is no HTML."""
    parser = html5lib.HTMLParser(strict=True, namespaceHTMLElements=False)
    return parser.parse(page)


def text_of(element):
    return "".join(element.itertext())


def asks_for_nothing(tree):
    for element in tree.iter():
        if not isinstance(element.tag, str):
            continue
        assert element.tag not in ("script", "iframe", "object", "embed", "base", "form")
        for name in ("src", "href", "srcset", "data", "action", "poster", "background"):
            link = element.get(name, "")
            scheme = urllib.parse.urlsplit(link).scheme
            assert not link or link.startswith("#") or scheme == "data", f"{element.tag} {link[:80]}"
    style = text_of(next(tree.iter("style")))
    assert "url(" not in style and "@import" not in style


def is_accessible(tree):
    assert next(tree.iter("html")).get("lang") == "en"
    levels = [int(e.tag[1]) for e in tree.iter() if e.tag in ("h1", "h2", "h3", "h4")]
    assert levels.count(1) == 1
    assert all(b <= a + 1 for a, b in zip(levels, levels[1:])), levels
    ids = [e.get("id") for e in tree.iter() if isinstance(e.tag, str) and e.get("id")]
    assert len(ids) == len(set(ids))
    for link in tree.iter("a"):
        assert link.get("href")[1:] in ids
    for image in tree.iter("img"):
        assert len(image.get("alt", "")) > 20, "a picture without words"
    for table in tree.iter("table"):
        heads = list(table.find("thead").iter("th"))
        assert heads and all(th.get("scope") == "col" for th in heads)
        for row in table.find("tbody").iter("tr"):
            cells = list(row)
            assert len(cells) == len(heads)
            assert cells[0].tag == "th" and cells[0].get("scope") == "row"


def tables_of(tree):
    """Every table as a list of rows, each a dictionary by the titles of the columns."""
    tables = []
    for table in tree.iter("table"):
        titles = [text_of(th) for th in table.find("thead").iter("th")]
        tables.append([dict(zip(titles, [text_of(cell) for cell in row]))
                       for row in table.find("tbody").iter("tr")])
    return tables


def same(words, figure, decimals=1):
    """Whether the first number of the words is the figure, as rounded for people."""
    number = float(NUMBER.search(words.replace("\u2212", "-")).group())
    digits = decimals if abs(figure) >= 1 else 3
    return abs(number - figure) <= 0.5000001 * 10 ** -digits


def has_extent(field):
    return any(r["h_least_deg"] < r["h_most_deg"] or r["v_least_deg"] < r["v_most_deg"]
               for r in field)


def has_figures(result, tree):
    """Where something was looked at there are pictures, and charts where a field has extent."""
    kinds = [image.get("src").split(";")[0] for image in tree.iter("img")]
    decided = [check["rows"][check["deciding"]["row_place"]] for check in result["checks"]
               if check["deciding"] and check["margin_mm2"] is not None]
    assert ("data:image/png" in kinds) == bool(decided)
    assert ("data:image/svg+xml" in kinds) == any(has_extent(row["field"]) for row in decided)


def applying(check):
    """Rows with their lamps to which they apply, in the order of the results."""
    return [(row, lamp) for row in check["rows"]
            for lamp in row["lamps"] + ([row["together"]] if row["together"] else [])
            if lamp["outcome"] != "not_applicable"]


def figures_agree(row, lamp, found, margin):
    of_area = row["criterion"]["kind"] == "least_area"
    right = lamp["least_visible_mm2"] if of_area else lamp["hidden_mm2"]
    assert same(found, right), (row["id"], lamp["lamp"], found, right)
    assert same(margin, lamp["margin_mm2"]), (row["id"], lamp["lamp"], margin, lamp["margin_mm2"])


def directions_agree(lamp, where):
    h, v = [float(n) for n in NUMBER.findall(where)]
    assert abs(h - lamp["worst"]["h_deg"]) < 0.0051, (lamp["lamp"], where)
    assert abs(v - lamp["worst"]["v_deg"]) < 0.0051, (lamp["lamp"], where)


def rows_agree(result, tables):
    """Each lamp under each row that applies, found in the table of its check by row and lamp."""
    shown = [t for t in tables if t and "Provenance" in t[0] and "Outcome" in t[0]]
    asked = [rows for rows in map(applying, result["checks"]) if rows]
    assert len(asked) == len(shown)
    compared = 0
    for rows, table in zip(asked, shown):
        assert len(rows) == len(table)
        for (row, lamp), line in zip(rows, table):
            assert (line["Row"], line["Lamp"]) == (row["id"], lamp["lamp"])
            assert line["Outcome"].startswith(lamp["outcome"].replace("_", " "))
            assert line["Provenance"] == row["provenance"]
            if lamp["margin_mm2"] is None:
                continue
            figures_agree(row, lamp, line["Found"], line["Margin"])
            directions_agree(lamp, line["Where"])
            compared += 1
    return compared


def answers_of(result):
    """The lines of the first page: row and lamp, the one that decided before the others."""
    answers = []
    for check in result["checks"]:
        deciding = check["deciding"]
        if not deciding or not applying(check):
            answers.append((check, None, None))
            continue
        row = check["rows"][deciding["row_place"]]
        lamps = [lamp for r, lamp in applying(check) if r is row]
        lamps.sort(key=lambda lamp: lamp["lamp"] != deciding["lamp"])
        answers += [(check, row, lamp) for lamp in lamps]
    return answers


def answers_agree(result, tables):
    table = next(t for t in tables if t and "Seen from" in t[0])
    answers = answers_of(result)
    assert len(table) == len(answers)
    for (check, row, lamp), line in zip(answers, table):
        assert line["Check"] == check["name"]
        assert line["Rule"] in (check["rule"], "the same")
        if lamp and lamp["margin_mm2"] is not None:
            assert line["Lamp"] == lamp["lamp"]
            figures_agree(row, lamp, line["Found"], line["Margin"])
            assert line["Seen from"].startswith(lamp["worst"]["words"].split(" ")[0])


def names_stand(result, tree):
    """As they are, whatever signs they hold."""
    title = text_of(next(tree.iter("h1")))
    assert title == "Lamp visibility: " + (result["title"] or result["study"])
    headings = [text_of(e) for e in tree.iter("h2")]
    lines = [text_of(e) for e in tree.iter("dd")]
    assert any(line.startswith(result["command"] + " (") for line in lines), result["command"]
    for check in result["checks"]:
        assert "Check: " + check["name"] in headings


def identity_agrees(result, tables):
    files = next(t for t in tables if t and "SHA-256" in t[0])
    assert [(f["File"], int(f["Bytes"]), f["SHA-256"]) for f in files] == \
        [(f["file"], f["bytes"], f["sha256"]) for f in result["files"]]
    certain = next((t for t in tables if t and "Certified" in t[0]), [])
    looked = [look for look in result["lamps"] if look["directions"]["h_deg"]]
    assert len(looked) == len(certain)
    for look, line in zip(looked, certain):
        d = look["directions"]
        assert int(line["Directions"]) == len(d["h_deg"])
        assert int(line["Certified"]) == sum(d["certified"])
        assert int(line["Exact"]) == len(look["exact"])
        assert same(line["Expected error"], max(d["expected_error_mm2"]))
        assert same(line["Mesh error"], max(d["mesh_error_mm2"]))


def digests_are_true(result, study):
    """Against another program's digests, of the files as they lie there."""
    for file in result["files"]:
        if file["use"] == "shipped_table":
            continue
        path = pathlib.Path(study).parent / file["file"]
        assert said("sha256sum", path).split()[0].decode() == file["sha256"]


def text_of_pdf(pdf):
    return said("pdftotext", "-layout", pdf, "-").decode()


FOUND_AND_MARGIN = (r"(-?\d+(?:\.\d+)?) mm\u00b2(?: hidden)?\s+"
                    r"([+-]\d+(?:\.\d+)?|0) mm\u00b2\s+")
ROW_IN_PDF = re.compile(FOUND_AND_MARGIN + r"H (-?\d+(?:\.\d+)?), V (-?\d+(?:\.\d+)?)")
ANSWER_IN_PDF = re.compile(FOUND_AND_MARGIN + r"(?![\sH])")


def pdf_figures_agree(result, text):
    """Found, margin and worst direction of every row, and found and margin of every answer, read
    out of the text as it is set. Nothing else has an area and a margin side by side."""
    rows = [(row, lamp) for check in result["checks"] for row, lamp in applying(check)
            if lamp["margin_mm2"] is not None]
    lines = ROW_IN_PDF.findall(text)
    assert len(lines) == len(rows), (len(lines), len(rows))
    for (row, lamp), (found, margin, h, v) in zip(rows, lines):
        figures_agree(row, lamp, found, margin)
        directions_agree(lamp, f"{h} {v}")
    answers = [(row, lamp) for _, row, lamp in answers_of(result)
               if lamp and lamp["margin_mm2"] is not None]
    lines = ANSWER_IN_PDF.findall(text[:text.index("Check: ")])
    assert len(lines) == len(answers), (len(lines), len(answers))
    for (row, lamp), (found, margin) in zip(answers, lines):
        figures_agree(row, lamp, found, margin)
    return len(rows)


def notices(result, compare):
    """A comparison that cannot fail would be worth nothing: it must tell every wrong figure."""
    lamps = [(row, lamp) for check in result["checks"] for row, lamp in applying(check)
             if lamp["margin_mm2"] is not None]
    for row, lamp in lamps:
        found = "least_visible_mm2" if row["criterion"]["kind"] == "least_area" else "hidden_mm2"
        for of, name, wrong in ((lamp, "margin_mm2", 0.2), (lamp, found, 0.2),
                                (lamp["worst"], "h_deg", 0.02), (lamp["worst"], "v_deg", 0.02)):
            right = of[name]
            of[name] = right + wrong
            try:
                compare()
            except AssertionError:
                continue
            finally:
                of[name] = right
            raise AssertionError(f"a wrong {name} of {lamp['lamp']}, {row['id']} was not noticed")


def pdf_has_every_cell(text, tree):
    """Digests whole, and every number of the page's text."""
    squeezed = re.sub(r"\s+", "", text)
    for element in list(tree.iter("td")) + list(tree.iter("th")):
        words = re.sub(r"\s+", "", text_of(element))
        if re.fullmatch(r"[0-9a-f]{64}", words):
            assert words in squeezed, words
    in_pdf = set(NUMBER.findall(text))
    main = text_of(next(tree.iter("main")))
    for number in set(NUMBER.findall(main)):
        if len(number) < 12: # digests hold longer runs of digits, and were looked at above
            assert number in in_pdf or number in squeezed, f"{number} is not in the PDF"


def pdf_is_sound(pdf, folder):
    info = said("pdfinfo", pdf).decode()
    pages = int(re.search(r"Pages:\s+(\d+)", info).group(1))
    assert "A4" in info
    assert "CreationDate" not in info
    fonts = said("pdffonts", pdf).decode().splitlines()[2:]
    assert fonts
    for font in fonts:
        embedded = font.split()[-5]
        assert embedded == "yes", font
    text = said("pdftotext", pdf, "-").decode()
    for page in range(1, pages + 1):
        assert f"page {page} of {pages}" in text
    said("pdftoppm", "-r", "30", "-gray", pdf, folder / "page")
    pictures = sorted(folder.glob("page-*.pgm"))
    assert len(pictures) == pages
    for picture in pictures:
        pixels = picture.read_bytes().split(b"\n", 3)[3]
        dark = sum(1 for value in pixels if value < 160)
        assert dark > 0.002 * len(pixels), f"{picture.name} is all but blank"
        picture.unlink()


def read_back(program, study, folder):
    shutil.rmtree(folder, ignore_errors=True)
    report = report_of(program, study, folder / "report")
    result = json.loads((report / "result.json").read_text(encoding="utf8"))
    tree = parsed((report / "report.html").read_text(encoding="utf8"))
    tables = tables_of(tree)
    asks_for_nothing(tree)
    is_accessible(tree)
    has_figures(result, tree)
    answers_agree(result, tables)
    compared = rows_agree(result, tables)
    notices(result, lambda: rows_agree(result, tables))
    names_stand(result, tree)
    identity_agrees(result, tables)
    digests_are_true(result, study)
    text = text_of_pdf(report / "report.pdf")
    assert pdf_figures_agree(result, text) == compared
    notices(result, lambda: pdf_figures_agree(result, text))
    pdf_has_every_cell(text, tree)
    pdf_is_sound(report / "report.pdf", folder)
    shutil.rmtree(folder)
    return compared


def main(program, folder, *studies):
    compared = sum(read_back(program, study, pathlib.Path(folder)) for study in studies)
    assert compared >= len(studies), f"{compared} verdicts with areas are too few to tell"
    print(f"{len(studies)} reports read back; {compared} verdicts are those of the results")


if __name__ == "__main__":
    main(*sys.argv[1:])
