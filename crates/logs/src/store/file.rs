//! A Parquet file under way.

use std::fs::File;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use arrow_array::{ArrayRef, RecordBatch};
use arrow_schema::{DataType, Field, Schema};
use parquet::arrow::ArrowWriter;
use parquet::basic::{Compression, Encoding};
use parquet::file::metadata::{KeyValue, SortingColumn};
use parquet::file::properties::{EnabledStatistics, WriterProperties};
use parquet::schema::types::ColumnPath;

use super::import::ImportError;

/// Rows of a row group.
const GROUP_ROWS: usize = 1 << 19;

/// A Parquet file under way.
pub struct Target {
    path: PathBuf,
    schema: Arc<Schema>,
    writer: ArrowWriter<File>,
}

impl Target {
    /// A new file, sorted by its first column.
    pub fn create(path: &Path, fields: Vec<Field>) -> Result<Self, ImportError> {
        if let Some(folder) = path.parent() {
            std::fs::create_dir_all(folder).map_err(|error| ImportError::io(folder, error))?;
        }
        let sorted = SortingColumn { column_idx: 0, descending: false, nulls_first: false };
        let mut properties = WriterProperties::builder()
            .set_compression(Compression::SNAPPY)
            .set_max_row_group_row_count(Some(GROUP_ROWS))
            .set_statistics_enabled(EnabledStatistics::Chunk)
            .set_sorting_columns(Some(vec![sorted]));
        for field in &fields {
            // A dictionary looks up every number: half the time of an import. Steps from row to row are
            // as short for times, addresses, codes and qualities.
            let path = ColumnPath::from(field.name().as_str());
            properties = match field.data_type() {
                DataType::Float32 | DataType::Float64 => {
                    properties.set_column_dictionary_enabled(path, false)
                }
                _ => properties
                    .set_column_dictionary_enabled(path.clone(), false)
                    .set_column_encoding(path, Encoding::DELTA_BINARY_PACKED),
            };
        }
        let properties = properties.build();
        let file = File::create(path).map_err(|error| ImportError::io(path, error))?;
        let schema = Arc::new(Schema::new(fields));
        let writer = ArrowWriter::try_new(file, Arc::clone(&schema), Some(properties))
            .map_err(|error| ImportError::parquet(path, &error))?;
        Ok(Self { path: path.to_owned(), schema, writer })
    }

    /// Adds rows.
    pub fn write(&mut self, columns: Vec<ArrayRef>) -> Result<(), ImportError> {
        let batch = RecordBatch::try_new(Arc::clone(&self.schema), columns)
            .map_err(|error| ImportError::parquet(&self.path, &error.into()))?;
        self.writer.write(&batch).map_err(|error| ImportError::parquet(&self.path, &error))
    }

    /// Writes what is held, and keeps the file open for its metadata.
    pub fn flush(&mut self) -> Result<(), ImportError> {
        self.writer.flush().map_err(|error| ImportError::parquet(&self.path, &error))
    }

    /// Adds the metadata and ends the file.
    pub fn finish(mut self, metadata: &[(&str, String)]) -> Result<(), ImportError> {
        for (key, value) in metadata {
            let key = format!("airtide.{key}");
            self.writer.append_key_value_metadata(KeyValue::new(key, value.clone()));
        }
        let path = self.path;
        self.writer.close().map_err(|error| ImportError::parquet(&path, &error))?;
        Ok(())
    }
}
