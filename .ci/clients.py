"""Reads results in the current folder with a library, and joins them by the codes of yarns."""

import json
import sys

plan = json.load(open("throw.json", encoding="utf-8"))
codes = {yarn["code"] for yarn in plan["yarns"]}
rounds = sum(len(piece["rounds"]) for piece in plan["pieces"])
pieces = len(plan["pieces"])
assert {"-MUD", "-1"} <= codes


def pandas():
    import pandas

    yarns = pandas.read_csv("throw-tables/yarns.csv", dtype={"code": str})
    table = pandas.read_csv("throw-tables/rounds.csv", dtype={"yarn": str})
    assert set(yarns["code"]) == codes
    joined = table.merge(yarns, left_on="yarn", right_on="code", how="inner")
    assert len(joined) == rounds, len(joined)
    progress = pandas.read_csv("throw-tables/progress.csv", parse_dates=["day"])
    assert list(progress["mark"]) == [1, 2]


def duckdb():
    import duckdb

    joined = duckdb.sql(
        "select count(*) from 'throw-tables/rounds.csv' r join 'throw-tables/yarns.csv' y"
        " on r.yarn = y.code"
    ).fetchone()[0]
    assert joined == rounds, joined
    across = duckdb.sql(
        "select count(*) from (select unnest(yarns, recursive := true) from 'throw.json') j"
        " join 'throw-tables/yarns.csv' y on j.code = y.code and abs(j.used_m - y.used_m) < 1e-9"
    ).fetchone()[0]
    assert across == len(codes), across


def holds_graph(borders, edges):
    assert len(borders) == pieces
    border = {piece["at"]: piece["rounds"][-1] for piece in plan["pieces"]}
    assert borders == border
    seams = [edge for edge in edges if edge["contact"] == "seam"]
    assert seams and all(0 <= edge["contrast"] <= 1 for edge in seams)
    assert {edge["seam"] for edge in seams} == {"within-strip", "between-strips"}


def networkx():
    import networkx

    graph = networkx.read_graphml("throw.graphml")
    edges = [data for _, _, data in graph.edges(data=True)]
    holds_graph(dict(graph.nodes(data="border")), edges)


def igraph():
    import igraph

    graph = igraph.Graph.Read_GraphML("throw.graphml")
    edges = [edge.attributes() for edge in graph.es]
    holds_graph(dict(zip(graph.vs["id"], graph.vs["border"])), edges)


{"pandas": pandas, "duckdb": duckdb, "networkx": networkx, "igraph": igraph}[sys.argv[1]]()
