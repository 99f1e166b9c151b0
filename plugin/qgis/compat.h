// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

/// Every difference between the desktop versions that this plugin is built for (3.22 to 4.x), and nothing
/// else.

#include <qgis.h>
#include <qgsfield.h>
#include <qgslocatorfilter.h>
#if _QGIS_VERSION_INT >= 33000
#include <qgsmaplayeraction.h>
#else
#include <qgsmaplayeractionregistry.h>
#endif
#include <qgsprocessingalgorithm.h>
#include <qgsprocessingparameters.h>
#include <qgstemporalnavigationobject.h>

#include <QDateTime>
#include <QTimeZone>
#include <QVariant>

namespace pipward::desktop {

inline QDateTime midnight_utc(const QDate& day) {
#if QT_VERSION_MAJOR >= 6
    return day.startOfDay(QTimeZone::utc());
#else
    return QDateTime(day, QTime(0, 0), Qt::UTC);
#endif
}

#if _QGIS_VERSION_INT >= 33600
inline constexpr auto whole_number = Qgis::ProcessingNumberParameterType::Integer;
inline constexpr auto real_number = Qgis::ProcessingNumberParameterType::Double;
inline constexpr auto file_behaviour = Qgis::ProcessingFileParameterBehavior::File;
inline constexpr auto day_only = Qgis::ProcessingDateTimeParameterDataType::Date;
inline constexpr auto advanced_flag = Qgis::ProcessingParameterFlag::Advanced;
inline constexpr auto optional_flag = Qgis::ProcessingParameterFlag::Optional;
inline constexpr auto point_source = Qgis::ProcessingSourceType::VectorPoint;
inline constexpr auto line_source = Qgis::ProcessingSourceType::VectorLine;
inline constexpr auto table_source = Qgis::ProcessingSourceType::Vector;
#else
inline constexpr auto whole_number = QgsProcessingParameterNumber::Integer;
inline constexpr auto real_number = QgsProcessingParameterNumber::Double;
inline constexpr auto file_behaviour = QgsProcessingParameterFile::File;
inline constexpr auto day_only = QgsProcessingParameterDateTime::Date;
inline constexpr auto advanced_flag = QgsProcessingParameterDefinition::FlagAdvanced;
inline constexpr auto optional_flag = QgsProcessingParameterDefinition::FlagOptional;
inline constexpr auto point_source = QgsProcessing::TypeVectorPoint;
inline constexpr auto line_source = QgsProcessing::TypeVectorLine;
inline constexpr auto table_source = QgsProcessing::TypeVector;
#endif

#if _QGIS_VERSION_INT >= 33600
inline constexpr auto animated_time = Qgis::TemporalNavigationMode::Animated;
using TimeMode = Qgis::TemporalNavigationMode;
inline constexpr auto time_stands_still = Qgis::AnimationState::Idle;
#else
inline constexpr auto animated_time = QgsTemporalNavigationObject::Animated;
using TimeMode = QgsTemporalNavigationObject::NavigationMode;
inline constexpr auto time_stands_still = QgsTemporalNavigationObject::Idle;
#endif

#if _QGIS_VERSION_INT >= 33000
inline constexpr auto point_geometry = Qgis::WkbType::Point;
inline constexpr auto line_geometry = Qgis::WkbType::LineString;
inline constexpr auto no_geometry = Qgis::WkbType::NoGeometry;
#else
inline constexpr auto point_geometry = QgsWkbTypes::Point;
inline constexpr auto line_geometry = QgsWkbTypes::LineString;
inline constexpr auto no_geometry = QgsWkbTypes::NoGeometry;
#endif

#if _QGIS_VERSION_INT >= 33800
using FieldType = QMetaType::Type;
inline constexpr auto text_field = QMetaType::Type::QString;
inline constexpr auto whole_field = QMetaType::Type::LongLong;
inline constexpr auto real_field = QMetaType::Type::Double;
inline constexpr auto day_field = QMetaType::Type::QDate;
inline constexpr auto yes_no_field = QMetaType::Type::Bool;
inline QVariant unknown_value(FieldType type) {
#if QT_VERSION_MAJOR >= 6
    return QVariant(QMetaType(type));
#else
    return QVariant(static_cast<QVariant::Type>(type));
#endif
}
#else
using FieldType = QVariant::Type;
inline constexpr auto text_field = QVariant::String;
inline constexpr auto whole_field = QVariant::LongLong;
inline constexpr auto real_field = QVariant::Double;
inline constexpr auto day_field = QVariant::Date;
inline constexpr auto yes_no_field = QVariant::Bool;
inline QVariant unknown_value(FieldType type) {
    return QVariant(type);
}
#endif

#if _QGIS_VERSION_INT >= 33400
inline QVariant data_of(const QgsLocatorResult& result) {
    return result.userData();
}
inline void set_data(QgsLocatorResult& result, const QVariant& data) {
    result.setUserData(data);
}
#else
inline QVariant data_of(const QgsLocatorResult& result) {
    return result.userData;
}
inline void set_data(QgsLocatorResult& result, const QVariant& data) {
    result.userData = data;
}
#endif

/// Something to do with one feature of a layer: offered by the identify tool and the attribute table.
class FeatureAction : public QgsMapLayerAction {
  public:
#if _QGIS_VERSION_INT >= 33000
    FeatureAction(const QString& name, QObject* parent, const QIcon& icon)
        : QgsMapLayerAction(name, parent, Qgis::MapLayerActionTarget::SingleFeature, icon) {}
    bool canRunUsingLayer(QgsMapLayer* layer, const QgsMapLayerActionContext&) const override {
        return suits(layer);
    }
    void triggerForFeature(QgsMapLayer* layer, const QgsFeature& feature,
                           const QgsMapLayerActionContext&) override {
        run_for(layer, feature);
    }
#else
    FeatureAction(const QString& name, QObject* parent, const QIcon& icon)
        : QgsMapLayerAction(name, parent, QgsMapLayerAction::SingleFeature, icon) {}
    bool canRunUsingLayer(QgsMapLayer* layer) const override {
        return suits(layer);
    }
    void triggerForFeature(QgsMapLayer* layer, const QgsFeature& feature) override {
        run_for(layer, feature);
    }
#endif

  protected:
    virtual bool suits(const QgsMapLayer* layer) const = 0;
    virtual void run_for(const QgsMapLayer* layer, const QgsFeature& feature) = 0;
};

}  // namespace pipward::desktop
