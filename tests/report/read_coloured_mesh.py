"""Reads the coloured meshes of a check back and holds them to result.json and facets.csv.

read_coloured_mesh.py PROGRAM FOLDER STUDY...
Written against the formats' own descriptions: PLY 1.0, OBJ 3.0, MTL.
"""

import csv
import json
import pathlib
import re
import struct
import subprocess
import sys

SIZES = {"float": "f", "int": "i", "uchar": "B"}


def file_name(check):
    return re.sub("[^A-Za-z0-9._-]+", "-", check)


def read_ply(path):
    header, body = path.read_bytes().split(b"end_header\n", 1)
    lines = header.decode("ascii").splitlines()
    assert lines[0] == "ply" and lines[1] == "format binary_little_endian 1.0"
    elements, at = {}, 0
    for line in lines[2:]:
        words = line.split()
        if words[0] == "element":
            elements[words[1]] = {"count": int(words[2]), "properties": []}
        elif words[0] == "property":
            list(elements.values())[-1]["properties"].append(words[1:])
    vertices, faces = [], []
    assert [p[0] for p in elements["vertex"]["properties"]] == ["float"] * 3
    for _ in range(elements["vertex"]["count"]):
        vertices.append(struct.unpack_from("<3f", body, at))
        at += 12
    for _ in range(elements["face"]["count"]):
        face = {}
        for kind, *names in elements["face"]["properties"]:
            count = 1
            if kind == "list":
                count = body[at]
                at += 1
                kind = names[1]
            code = f"<{count}{SIZES[kind]}"
            values = struct.unpack_from(code, body, at)
            at += struct.calcsize(code)
            face[names[-1]] = values if count > 1 else values[0]
        faces.append(face)
    assert at == len(body), "bytes are left over"
    return vertices, faces


def read_obj(path):
    vertices, faces, material, library = [], [], None, None
    for line in path.read_text("ascii").splitlines():
        words = line.split()
        if words[0] == "v":
            vertices.append(tuple(float(w) for w in words[1:]))
        elif words[0] == "usemtl":
            material = words[1]
        elif words[0] == "mtllib":
            library = words[1]
        elif words[0] == "f":
            faces.append((material, tuple(int(w) - 1 for w in words[1:])))
        else:
            assert words[0] in ("#", "o"), line
    return vertices, faces, library


def read_materials(path):
    materials = {}
    for line in path.read_text("ascii").splitlines():
        words = line.split()
        if words[0] == "newmtl":
            name = words[1]
        elif words[0] == "Kd":
            materials[name] = [round(255 * float(w)) for w in words[1:]]
    return materials


def check_mesh(folder, stem, deciding):
    vertices, faces = read_ply(folder / f"{stem}.ply")
    obj_vertices, obj_faces, library = read_obj(folder / f"{stem}.obj")
    materials = read_materials(folder / library)
    assert len(vertices) == len(obj_vertices) and len(faces) == len(obj_faces)
    for a, b in zip(vertices, obj_vertices):
        assert max(abs(x - y) for x, y in zip(a, b)) < 1e-3
    for face, (material, corners) in zip(faces, obj_faces):
        assert face["vertex_indices"] == corners
        colour = [face["red"], face["green"], face["blue"]]
        # Eight classes stand for the whole ramp: half a class off at most, and twice that where
        # the least that takes anything is lifted out of the class that takes nothing.
        assert max(abs(x - y) for x, y in zip(colour, materials[material])) <= 33
        assert (material == "takes_nothing") == (face["taken_mm2"] == 0)
    for place, blocker in enumerate(deciding["blockers"]):
        facets = blocker["facets"]
        taken = dict(zip(facets["facet"], facets["mean_mm2"] or facets["at_worst_mm2"]))
        mine = {f["facet"]: f["taken_mm2"] for f in faces if f["surface"] == place}
        assert {f for f, t in mine.items() if t > 0} == {f for f, t in taken.items() if t > 0}
        for facet, area in taken.items():
            assert abs(mine[facet] - area) <= 1e-6 * max(1, area)
        centres = zip(facets["facet"], facets["centre_x_mm"], facets["centre_y_mm"],
                      facets["centre_z_mm"])
        corners = {f["facet"]: f["vertex_indices"] for f in faces if f["surface"] == place}
        for facet, *centre in centres:
            for axis in range(3):
                mean = sum(vertices[v][axis] for v in corners[facet]) / 3
                assert abs(mean - centre[axis]) < 1e-3


def check_study(program, folder, study):
    run = subprocess.run([program, "check", study, "--out", folder, "--step", "5", "--quiet"],
                         stdout=subprocess.PIPE, check=False)
    assert run.returncode in (0, 1, 4), run
    result = json.loads((folder / "result.json").read_text("utf-8"))
    rows = list(csv.DictReader((folder / "facets.csv").open(encoding="utf-8", newline="")))
    seen = 0
    for check in result["checks"]:
        deciding = check["deciding"]
        row = check["rows"][deciding["row_place"]]
        verdict = row["together"] if deciding["together"] else row["lamps"][deciding["lamp_place"]]
        if verdict["blockers"]:
            check_mesh(folder / "blocking", file_name(check["name"]), verdict)
            seen += 1
    facets = sum(len(b["facets"]["facet"]) for c in result["checks"] for r in c["rows"]
                 for v in r["lamps"] + ([r["together"]] if r["together"] else [])
                 for b in v["blockers"])
    assert len(rows) == facets and seen > 0
    print(f"{study}: {seen} coloured meshes and {facets} facets agree")


def main():
    program, folder, *studies = sys.argv[1:]
    for place, study in enumerate(studies):
        check_study(program, pathlib.Path(folder) / str(place), study)


main()
