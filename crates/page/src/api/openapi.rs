//! The API described, `OpenAPI` 3.1, from the JSON Schemas of the documents themselves.

use axum::Json;
use schemars::generate::SchemaSettings;
use schemars::{JsonSchema, SchemaGenerator};
use serde_json::{Map, Value, json};
use view::{
    CheckDocument, ErrorDocument, FileDocument, FileSaveRequest, FilesDocument, IssueRequest,
    NowDocument, NowRequest, PlansDocument, SeriesDocument, SiteDocument, TrialDocument,
    TrialRequest, UnitsDocument,
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

fn questions(schemas: &mut SchemaGenerator) -> Vec<Question<'static>> {
    let get = |path, about, query, answer| Question {
        path,
        method: "get",
        about,
        query,
        body: None,
        answer,
    };
    let post = |path, about, body, answer| Question {
        path,
        method: "post",
        about,
        query: &[],
        body: Some(body),
        answer,
    };
    let text = json!({ "text/plain": { "schema": { "type": "string" } } });
    let bytes = json!({ "application/octet-stream": {} });
    let object = json_of(json!({ "type": "object" }));
    vec![
        get(
            "/site",
            "The survey served, and what may be done with it",
            &[],
            of::<SiteDocument>(schemas),
        ),
        get(
            "/units",
            "How numbers are shown in each unit profile",
            &[],
            of::<UnitsDocument>(schemas),
        ),
        get(
            "/texts",
            "Fluent texts of a language",
            &[("language", "string", "Language tag")],
            text,
        ),
        get("/schemas", "JSON Schemas of survey files by name", &[], object.clone()),
        get("/openapi.json", "This description", &[], object),
        get(
            "/check",
            "Everything that is wrong with the survey",
            &[],
            of::<CheckDocument>(schemas),
        ),
        get("/files", "The files of the survey", &[], of::<FilesDocument>(schemas)),
        get("/file", "One file", FILE, of::<FileDocument>(schemas)),
        Question {
            path: "/file",
            method: "put",
            about: "Saves values of a file, or its text, if it is still as it was read",
            query: &[],
            body: Some(of::<FileSaveRequest>(schemas)),
            answer: of::<FileDocument>(schemas),
        },
        post(
            "/plan",
            "A plan tried; 503 where every core is at work",
            of::<TrialRequest>(schemas),
            of::<TrialDocument>(schemas),
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
