//! The API described, `OpenAPI` 3.1, from the JSON Schemas of the documents themselves.

use axum::Json;
use schemars::generate::SchemaSettings;
use schemars::{JsonSchema, SchemaGenerator};
use serde_json::{Map, Value, json};
use view::{
    CheckDocument, DriveDocument, DriveRequest, ErrorDocument, FileDocument, FileSaveRequest,
    FilesDocument, IssueRequest, JudgeRequest, MapDocument, NowDocument, NowRequest,
    PapersDocument, PlanDocument, PlansDocument, PracticeDocument, SeriesDocument, SiteDocument,
    StepRequest, TrialDocument, TrialRequest, UnitsDocument, VerdictDocument,
};

/// `GET /api/openapi.json`
pub async fn serve() -> Json<Value> {
    Json(document())
}

/// One question.
struct Question<'a> {
    path: &'a str,
    method: &'a str,
    about: &'a str,
    query: &'a [(&'a str, &'a str, &'a str)],
    body: Option<Value>,
    answer: Value,
}

/// The description.
pub fn document() -> Value {
    let settings = SchemaSettings::draft2020_12()
        .with(|settings| settings.definitions_path = "/components/schemas".into());
    let mut schemas = settings.into_generator();
    let mut paths = Map::new();
    for question in questions(&mut schemas) {
        let entry = paths.entry(format!("/api{}", question.path)).or_insert_with(|| json!({}));
        entry[question.method] = question.described();
    }
    let error = of::<ErrorDocument>(&mut schemas);
    let definitions = schemas.take_definitions(true);
    json!({
        "openapi": "3.1.0",
        "info": {
            "title": "Airtide, the local page",
            "version": env!("CARGO_PKG_VERSION"),
            "description": "Requests that are not GET carry x-airtide-token, the token of /api/site.",
        },
        "paths": paths,
        "components": {
            "schemas": definitions,
            "responses": { "Error": { "description": "Why not", "content": json_of(error) } },
        },
    })
}

fn of<T: JsonSchema>(schemas: &mut SchemaGenerator) -> Value {
    json_of(schemas.subschema_for::<T>().to_value())
}

fn json_of(schema: Value) -> Value {
    if schema.get("application/json").is_some() {
        return schema;
    }
    json!({ "application/json": { "schema": schema } })
}

/// What a question about one file names.
const FILE: &[(&str, &str, &str)] = &[("path", "string", "Path in the survey")];

fn get(
    path: &'static str,
    about: &'static str,
    query: &'static [(&'static str, &'static str, &'static str)],
    answer: Value,
) -> Question<'static> {
    Question { path, method: "get", about, query, body: None, answer }
}

fn post(path: &'static str, about: &'static str, body: Value, answer: Value) -> Question<'static> {
    Question { path, method: "post", about, query: &[], body: Some(body), answer }
}

fn questions(schemas: &mut SchemaGenerator) -> Vec<Question<'static>> {
    let mut all = beginning(schemas);
    all.extend(files(schemas));
    all.extend(plans(schemas));
    all.extend(paper(schemas));
    all.extend(practice(schemas));
    all.extend(series(schemas));
    all
}

fn beginning(schemas: &mut SchemaGenerator) -> Vec<Question<'static>> {
    let text = json!({ "text/plain": { "schema": { "type": "string" } } });
    let object = json_of(json!({ "type": "object" }));
    let site = of::<SiteDocument>(schemas);
    let units = of::<UnitsDocument>(schemas);
    vec![
        get("/site", "The survey served, and what may be done with it", &[], site),
        get("/units", "How numbers are shown in each unit profile", &[], units),
        get(
            "/texts",
            "Fluent texts of a language",
            &[("language", "string", "Language tag")],
            text,
        ),
        get("/schemas", "JSON Schemas of survey files by name", &[], object.clone()),
        get("/openapi.json", "This description", &[], object),
    ]
}

fn files(schemas: &mut SchemaGenerator) -> Vec<Question<'static>> {
    let check = of::<CheckDocument>(schemas);
    vec![
        get("/check", "Everything that is wrong with the survey", &[], check),
        get("/files", "The files of the survey", &[], of::<FilesDocument>(schemas)),
        get("/file", "One file", FILE, of::<FileDocument>(schemas)),
        get(
            "/map",
            "A route with the shape of its track",
            &[("route", "string", "Name of the route")],
            of::<MapDocument>(schemas),
        ),
        Question {
            path: "/file",
            method: "put",
            about: "Saves values of a file, or its text, if it is still as it was read",
            query: &[],
            body: Some(of::<FileSaveRequest>(schemas)),
            answer: of::<FileDocument>(schemas),
        },
    ]
}

fn plans(schemas: &mut SchemaGenerator) -> Vec<Question<'static>> {
    vec![
        post(
            "/plan",
            "A plan tried; 503 where every core is at work",
            of::<TrialRequest>(schemas),
            of::<TrialDocument>(schemas),
        ),
        post(
            "/effects",
            "The plan tried, with what it does and costs; slower",
            of::<TrialRequest>(schemas),
            of::<PlanDocument>(schemas),
        ),
        post(
            "/now",
            "The answer to a call from the road",
            of::<NowRequest>(schemas),
            of::<NowDocument>(schemas),
        ),
        get("/plans", "Issued plans", &[], of::<PlansDocument>(schemas)),
        post(
            "/issue",
            "Issues the plan of a haul",
            of::<IssueRequest>(schemas),
            of::<PlansDocument>(schemas),
        ),
    ]
}

fn paper(schemas: &mut SchemaGenerator) -> Vec<Question<'static>> {
    let bytes = json!({ "text/html": {}, "application/pdf": {}, "application/octet-stream": {} });
    vec![
        get("/papers", "Documents for paper there are", &[], of::<PapersDocument>(schemas)),
        get(
            "/paper",
            "One document; with plan=NUMBER of an issued plan, else a draft",
            &[
                ("kind", "string", "Kind"),
                ("haul", "string", "Haul"),
                ("language", "string", "Language tag"),
                ("units", "string", "si, us or metric-bar"),
                ("format", "string", "html, pdf or xlsx"),
            ],
            bytes,
        ),
    ]
}

fn practice(schemas: &mut SchemaGenerator) -> Vec<Question<'static>> {
    vec![
        post(
            "/practice",
            "Begins a drive of a planned haul, or plays one again up to where it was",
            of::<DriveRequest>(schemas),
            of::<DriveDocument>(schemas),
        ),
        post(
            "/practice/step",
            "Something done at the wheel, and time that passes",
            of::<StepRequest>(schemas),
            of::<PracticeDocument>(schemas),
        ),
        post(
            "/practice/verdict",
            "The drive so far, judged and priced",
            of::<JudgeRequest>(schemas),
            of::<VerdictDocument>(schemas),
        ),
    ]
}

fn series(schemas: &mut SchemaGenerator) -> Vec<Question<'static>> {
    let bytes = json!({ "application/octet-stream": {} });
    vec![
        get("/series", "Long series there are", &[], of::<SeriesDocument>(schemas)),
        get(
            "/series/window",
            "Part of a series, lowest and highest of each bucket; see SeriesDocument for the bytes",
            &[
                ("id", "string", "Series"),
                ("columns", "string", "Column numbers, comma between"),
                ("from_s", "number", "First time"),
                ("to_s", "number", "Last time"),
                ("buckets", "integer", "Most buckets"),
            ],
            bytes,
        ),
    ]
}

impl Question<'_> {
    fn described(&self) -> Value {
        let parameters = self.query.iter().map(|(name, kind, about)| {
            json!({ "name": name, "in": "query", "required": true, "description": about,
                    "schema": { "type": kind } })
        });
        let mut described = json!({
            "summary": self.about,
            "responses": {
                "200": { "description": "The answer", "content": &self.answer },
                "default": { "$ref": "#/components/responses/Error" },
            },
        });
        if !self.query.is_empty() {
            described["parameters"] = parameters.collect();
        }
        if let Some(body) = &self.body {
            described["requestBody"] = json!({ "required": true, "content": body });
        }
        described
    }
}
